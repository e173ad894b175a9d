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
    /// The next prescription's load, targets and reason. First the days since the last time are looked at, then the plan's
    /// rule. The load that most sets used last time is the one that counts, whatever was asked for; where the kit can no
    /// longer give it, the nearest easier one stands in and the why-line says so.
    /// </summary>
    /// <param name="slot">The slot that asks: its scheme and its rule of progress.</param>
    /// <param name="exercise">The exercise that fills it.</param>
    /// <param name="past">The performances of that exercise, oldest first; may be empty.</param>
    /// <param name="loads">The loads the kit can give it; null where no load is told.</param>
    /// <param name="today">The date it is for.</param>
    /// <param name="known">A load that a set known from elsewhere gives to begin with; null where none is told.</param>
    /// <returns>A load from <paramref name="loads"/>, never a harder one after a miss.</returns>
    public static Decision Next(
        Slot slot, Exercise exercise, IReadOnlyList<Performance> past, ReachableLoads? loads, LocalDate today, KnownStart? known = null)
    {
        List<Performance> telling = [.. past.Where(p => loads is null || LoadUsed.Of(p, exercise) is not null)];
        return NeverCounted(slot, loads) ? AsPlanned(slot)
            : telling.Count == 0 ? FirstTime.Of(slot, exercise, loads, known)
            : Decide(new Footing(slot, exercise, telling, loads, today));
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

    private static bool NeverCounted(Slot slot, ReachableLoads? loads) =>
        loads is null && (slot.Progress.Kind == ProgressKind.None || slot.Scheme is Scheme.Total or Scheme.Tick);

    private static Decision AsPlanned(Slot slot) =>
        new(null, Reps.Each(slot.Scheme, Reps.Low(slot.Scheme)), new(Reasons.Unchanged, "as the plan has it"));

    private static Decision Decide(Footing f)
    {
        var decision = LayOff.Next(f) ?? ByRule(f);
        return f.Used is { } used && f.Load is { } load && used.CompareTo(load) != 0
            ? decision with { Why = decision.Why with { Line = $"{decision.Why.Line} ({used} no longer loads)" } }
            : decision;
    }

    private static Decision ByRule(Footing f) => f.Slot.Progress.Kind switch
    {
        ProgressKind.None => Unchanged(f),
        ProgressKind.LongerHold => LongerHold.Next(f),
        ProgressKind.StepWhenAllMet or ProgressKind.WorkUpRange =>
            f.Slot.Scheme is Scheme.Range ? WorkUpRange.Next(f) : StepWhenAllMet.Next(f),
        _ => throw new UnreachableException(),
    };

    private static Decision Unchanged(Footing f) => new(
        f.Load,
        Reps.Each(f.Slot.Scheme, Reps.Low(f.Slot.Scheme)),
        new(Reasons.Unchanged, $"as on {f.On}: {LoadText.Same(f.Load, f.Exercise)}"));
}
