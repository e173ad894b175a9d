using System.Diagnostics;
using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>Decides the next load and targets of an exercise from what was done of it.</summary>
public static class Progress
{
    /// <summary>
    /// The next prescription's load, targets and reason. First the days since the motion was last trained are looked at, then
    /// the plan's rule; a sore motion makes either easier, and the first week back from a lay-off has half the sets. The load that most sets used last time is the one that counts, whatever was asked for; where the kit can no
    /// longer give it, the nearest easier one stands in and the why-line says so.
    /// </summary>
    /// <param name="slot">The slot that asks: its scheme and its rule of progress.</param>
    /// <param name="exercise">The exercise that fills it.</param>
    /// <param name="past">The performances of that exercise, oldest first; may be empty.</param>
    /// <param name="loads">The loads the kit can give it; null where no load is told.</param>
    /// <param name="today">The date it is for.</param>
    /// <param name="meanwhile">What else bears on it; null for nothing.</param>
    /// <param name="known">A load that a set known from elsewhere gives to begin with; null where none is told.</param>
    /// <returns>A load from <paramref name="loads"/>, never a harder one after a miss.</returns>
    public static Decision Next(
        Slot slot,
        Exercise exercise,
        IReadOnlyList<Performance> past,
        ReachableLoads? loads,
        LocalDate today,
        Meanwhile? meanwhile = null,
        KnownStart? known = null)
    {
        List<Performance> all = [.. past.Where(p => loads is null || p.Sets.Any(s => s.Set.Load is not null))];
        List<Performance> telling = [.. all.Where(p => !LightWeek.Is(p.Asked))];
        return NeverCounted(slot, loads) ? AsPlanned(slot)
            : all.Count == 0 ? Sparing.Cautioned(FirstTime.Of(slot, exercise, loads, known), meanwhile)
            : Decide(new Footing(slot, exercise, telling.Count > 0 ? telling : all, all, loads, today, meanwhile ?? Meanwhile.Nothing));
    }

    /// <summary>
    /// Misses in a row at the load last used. A session cut short or done at mixed loads says nothing and is passed over;
    /// one with every rep done ends the row, also where form slipped; so does another load.
    /// </summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="past">Its performances, oldest first.</param>
    public static int MissesInARow(Exercise exercise, IReadOnlyList<Performance> past) => past.Reverse()
        .TakeWhile(p => LoadUsed.Of(p, exercise) == LoadUsed.Of(past[^1], exercise))
        .Select(p => Judge.Of(p, exercise))
        .TakeWhile(v => v is Verdict.Missed or Verdict.CutShort or Verdict.MixedLoads)
        .Count(v => v == Verdict.Missed);

    private static bool NeverCounted(Slot slot, ReachableLoads? loads) => loads is null
        && (slot.Progress.Kind == ProgressKind.None
            || slot.Scheme is Scheme.Tick
            || (slot.Scheme is Scheme.Total && slot.Progress.Kind != ProgressKind.GrowTotal));

    private static Decision AsPlanned(Slot slot) =>
        new(null, Reps.Each(slot.Scheme, Reps.Low(slot.Scheme)), new(Reasons.Unchanged, "as the plan has it"));

    private static Decision Decide(Footing f)
    {
        var decision = FirstWeekBack(f, Sparing.Of(f, LayOff.Next(f) ?? ClimbBack.Next(f) ?? ByRule(f)));
        return decision with { Why = decision.Why with { Line = decision.Why.Line + Gone(f), Inputs = Inputs.Of(f, decision) } };
    }

    /// <summary>Half the sets in the first week back after more than two weeks. Common practice, no source.</summary>
    private static Decision FirstWeekBack(Footing f, Decision decision) => f.Gaps.IsFirstWeekBack(LayOff.HalfSetsDays)
        ? decision with
        {
            Targets = Reps.Half(f.Slot.Scheme, decision.Targets),
            Why = decision.Why.Advise("first week back: half the sets"),
        }
        : decision;

    private static string Gone(Footing f) =>
        f.Used is { } used && f.Load is { } load && used.CompareTo(load) != 0 ? $" ({used} no longer loads)" : "";

    private static Decision ByRule(Footing f) => f.Slot.Progress.Kind switch
    {
        ProgressKind.None => Unchanged(f),
        ProgressKind.LongerHold => LongerHold.Next(f),
        ProgressKind.GrowTotal => GrowTotal.Next(f),
        ProgressKind.TwoForTwo when f.Slot.Scheme is Scheme.Fixed => TwoForTwo.Next(f),
        ProgressKind.StepWhenAllMet or ProgressKind.WorkUpRange or ProgressKind.TwoForTwo =>
            f.Slot.Scheme is Scheme.Range ? WorkUpRange.Next(f) : StepWhenAllMet.Next(f),
        _ => throw new UnreachableException(),
    };

    private static Decision Unchanged(Footing f) => new(
        f.Load,
        Reps.Each(f.Slot.Scheme, Reps.Low(f.Slot.Scheme)),
        new(Reasons.Unchanged, $"as on {f.On}: {LoadText.Same(f.Load, f.Exercise)}"));
}
