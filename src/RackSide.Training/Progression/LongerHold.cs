using System.Globalization;

namespace RackSide.Training.Progression;

/// <summary>
/// All holds clean at the target: 5 s more, 10 s more above 30 s, up to the plan's longest. A hold that fell short is
/// asked for again; a hold is for quality, so nothing gets shorter. Common practice, no source.
/// </summary>
internal static class LongerHold
{
    private const int StepSeconds = 5, LongStepSeconds = 10, LongAboveSeconds = 30;

    public static Decision Next(Footing f)
    {
        var longest = Reps.High(f.Slot.Scheme);
        return f.Verdict != Verdict.Met ? Again.After(f, Reps.Each(f.Slot.Scheme, f.Asked))
            : f.Asked >= longest ? new(f.Load, Reps.Each(f.Slot.Scheme, longest), new(
                Reasons.LongestHold, $"all holds clean at {longest} s on {f.On}: ready for a harder hold"))
            : Longer(f);
    }

    private static Decision Longer(Footing f)
    {
        var step = f.Asked > LongAboveSeconds ? LongStepSeconds : StepSeconds;
        var targets = Reps.Each(f.Slot.Scheme, f.Asked + step);
        return new(f.Load, targets, new(Reasons.LongerHold, string.Create(
            CultureInfo.InvariantCulture, $"all holds clean on {f.On}: {targets[0] - f.Asked} s more")));
    }
}
