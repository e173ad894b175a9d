using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>
/// Reps before load. Each time asks, in every set, for one rep more than the poorest set of last time, within the range;
/// all sets at the top with honest form earn a step and go back to the bottom; a set below the bottom is a miss. One
/// number for all sets, because a lifter can keep one number in mind. Common practice, no source.
/// </summary>
internal static class WorkUpRange
{
    public static Decision Next(Footing f) => f.Verdict switch
    {
        Verdict.Missed when f.MissedTooOften => TooManyMisses.Next(f),
        Verdict.Missed => Again.After(f, Reps.Each(f.Slot.Scheme, f.Fewest + 1)),
        Verdict.Met => StepUp.Next(f, Reasons.TopOfRange, $"all {Top(f)} done"),
        Verdict.WithinRange => OneRepMore(f),
        _ => Again.After(f, Reps.Each(f.Slot.Scheme, f.Asked)),
    };

    private static Decision OneRepMore(Footing f)
    {
        var targets = Reps.Each(f.Slot.Scheme, f.Fewest + 1);
        var same = LoadText.Same(f.Load, f.Exercise);
        return new(f.Load, targets, new(
            Reasons.OneRepMore, $"at least {f.Fewest} in each set on {f.On}: {same}, aim for {targets[0]}"));
    }

    private static string Top(Footing f) =>
        f.Last.Asked.Scheme is Scheme.Range r ? $"{f.Last.Asked.Targets.Count}x{r.High}" : Reps.Text(f.Last.Asked);
}
