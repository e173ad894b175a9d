using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Planning;

/// <summary>
/// How long a lifter takes over a set, the rest that was asked for taken off: the work, the plates, the talk. Learned from
/// when sets were accepted in the last sessions, as the middle one of them all, so that one long telephone call teaches
/// nothing. Common practice, no source.
/// </summary>
/// <param name="WorkingSet">A working set.</param>
/// <param name="WarmUpSet">A warm-up set with its plates.</param>
public sealed record LifterPace(Duration WorkingSet, Duration WarmUpSet)
{
    private const int SessionsLearnedFrom = 6, FewestOfAKind = 10;

    private static readonly Duration Shortest = Duration.FromSeconds(10), Longest = Duration.FromMinutes(4);

    /// <summary>The usual pace, for somebody new.</summary>
    public static LifterPace Usual { get; } = new(TimeEstimate.WorkingSet, TimeEstimate.WarmUpSet);

    /// <summary>The pace of a lifter; what too few sets tell of is the usual one.</summary>
    public static LifterPace Of(TrainingHistory history)
    {
        var turns = history.Sessions.TakeLast(SessionsLearnedFrom).SelectMany(Turns).ToList();
        return new(
            Middle(turns.Where(t => t.Kind == SetKind.Working)) ?? Usual.WorkingSet,
            Middle(turns.Where(t => t.Kind == SetKind.WarmUp)) ?? Usual.WarmUpSet);
    }

    // From one set of a slot to the next of the same kind: within a group the other slots' sets lie between, and from one
    // exercise to the next the way and the first plates.
    private static IEnumerable<(SetKind Kind, Duration Took)> Turns(SessionRecord session)
    {
        var sets = session.Sets.Select(s => s.Set).ToList();
        var rests = session.Prescriptions.Where(p => p.Group is null).ToDictionary(p => p.Slot, p => p.Rest);
        foreach (var (before, set) in sets.Zip(sets.Skip(1)))
        {
            if (before.Slot == set.Slot && before.Kind == set.Kind && rests.TryGetValue(set.Slot, out var rest))
            {
                var took = set.At - before.At - (set.Kind == SetKind.Working ? rest : Duration.Zero);
                if (took >= Shortest && took <= Longest)
                {
                    yield return (set.Kind, took);
                }
            }
        }
    }

    private static Duration? Middle(IEnumerable<(SetKind Kind, Duration Took)> turns)
    {
        var took = turns.Select(t => t.Took).Order().ToList();
        return took.Count < FewestOfAKind ? null : Duration.FromSeconds(Math.Round(took[took.Count / 2].TotalSeconds));
    }
}
