using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.Training.Planning;

/// <summary>
/// How long a training day takes. Common practice, no source: 40 s for a working set, 45 s for a warm-up set with its
/// plates, a hold its seconds, 6 s a rep of a total (half of them breath), seconds in all half as much again, a tick its
/// minutes or one. One-sided work takes twice as long. A rest follows every set, or every round of a group, and every ramp;
/// the last one of an exercise is the way to the next.
/// </summary>
public static class TimeEstimate
{
    /// <summary>A working set.</summary>
    public static Duration WorkingSet { get; } = Duration.FromSeconds(40);

    /// <summary>A warm-up set with its plates.</summary>
    public static Duration WarmUpSet { get; } = Duration.FromSeconds(45);

    /// <summary>The sets that a search for a first load may take.</summary>
    public const int SearchSets = 2;

    /// <summary>A rep of a total, the breath between its sets included.</summary>
    public static Duration RepOfTotal { get; } = Duration.FromSeconds(6);

    /// <summary>A second of work by time or of a hold in shares, half as much again for breath between them.</summary>
    public static Duration AccumulatedSecond { get; } = Duration.FromSeconds(1.5);

    /// <summary>Something to tick, of so many minutes; those without a guide take one.</summary>
    public static Duration Tick(int minutes) => Duration.FromMinutes(Math.Max(minutes, 1));

    /// <summary>The time of these prescriptions done in order, at the lifter's pace or else the usual one.</summary>
    public static Duration Of(IReadOnlyList<Prescription> prescriptions, Catalogue catalogue, LifterPace? pace = null) =>
        Turns(prescriptions).Aggregate(Duration.Zero, (sum, turn) => sum + Turn(turn, catalogue, pace ?? LifterPace.Usual));

    /// <summary>Each exercise alone, or the neighbours of one group together.</summary>
    private static List<List<Prescription>> Turns(IReadOnlyList<Prescription> prescriptions)
    {
        List<List<Prescription>> turns = [];
        foreach (var p in prescriptions)
        {
            if (p.Group is not null && turns.Count > 0 && turns[^1][0].Group == p.Group)
            {
                turns[^1].Add(p);
            }
            else
            {
                turns.Add([p]);
            }
        }

        return turns;
    }

    private static Duration Turn(List<Prescription> turn, Catalogue catalogue, LifterPace pace)
    {
        var work = turn.Aggregate(Duration.Zero, (sum, p) => sum + Work(p, catalogue, pace));
        var changes = turn.SkipLast(1).Aggregate(Duration.Zero, (sum, p) => sum + p.ChangeOver);
        var rounds = turn.Max(p => p.Scheme is Scheme.Total or Scheme.Accumulate or Scheme.Tick ? 0 : p.Targets.Count);
        return work + ((changes + turn.Max(p => p.Rest)) * rounds);
    }

    private static Duration Work(Prescription p, Catalogue catalogue, LifterPace pace)
    {
        var sides = catalogue.Find(p.Exercise)?.OneSided == true && p.Scheme is not Scheme.Accumulate ? 2 : 1;
        var working = p.Scheme switch
        {
            Scheme.Hold => Duration.FromSeconds(p.Targets.Sum()),
            Scheme.Total => p.Targets.Sum() * RepOfTotal,
            Scheme.Accumulate => AccumulatedSecond * p.Targets.Sum(),
            Scheme.Tick t => Tick(t.Minutes),
            _ => p.Targets.Count * pace.WorkingSet,
        };
        var warmUps = p.Search is null ? p.Ramp.Count : SearchSets;
        return (working * sides) + (warmUps * pace.WarmUpSet) + RampRest.After(p, warmUps);
    }
}
