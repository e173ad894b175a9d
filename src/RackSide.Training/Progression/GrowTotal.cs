using System.Globalization;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>
/// A total done with honest form grows by the plan's step up to its ceiling; one not done, or with form slipped, is asked
/// for again. Common practice, no source. Where the plan's own total is larger than what was asked for, the plan's is taken.
/// </summary>
internal static class GrowTotal
{
    public static Decision Next(Footing f) =>
        f.Verdict != Verdict.Met ? Again.After(f, Reps.Each(f.Slot.Scheme, Math.Min(f.Asked, Ceiling(f))))
        : f.Asked >= Ceiling(f) ? Grown(f)
        : More(f);

    private static int Ceiling(Footing f) => f.Slot.Progress.UpTo ?? (2 * Reps.Low(f.Slot.Scheme));

    private static Decision Grown(Footing f) => new(f.Load, [Ceiling(f)], new(
        Reasons.LargestTotal, string.Create(CultureInfo.InvariantCulture, $"all {f.Asked} done on {f.On}: ready for a harder exercise")));

    private static Decision More(Footing f)
    {
        var targets = Reps.Each(f.Slot.Scheme, Math.Min(f.Asked + f.Slot.Progress.GrowBy, Ceiling(f)));
        return new(f.Load, targets, new(Reasons.GrowTotal, string.Create(
            CultureInfo.InvariantCulture, $"all {f.Asked} done on {f.On}: {targets[0] - f.Asked} more in all")));
    }
}
