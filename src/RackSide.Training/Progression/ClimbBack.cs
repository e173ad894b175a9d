using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>
/// After more than eight weeks away a lifter begins near half, and from there a step comes each session, also within a
/// range of reps and under two-for-two, until the old load is near or a set is missed. Common practice, no source. Where one step would go over
/// ten per cent the plan's own rule has the word, which works the reps up first.
/// </summary>
internal static class ClimbBack
{
    /// <summary>The next step of the climb, or null where there is none to make.</summary>
    public static Decision? Next(Footing f)
    {
        if (f.Slot is not ({ Scheme: Scheme.Range } or { Progress.Kind: ProgressKind.TwoForTwo }) || !f.Earned || f.Load is not { } load || OldLoad(f) is not { } old)
        {
            return null;
        }

        return StepUp.Load(f, load) is { } harder && !LoadUsed.IsHarder(harder, old, f.Exercise) && !Ceiling.IsOver(load, harder, f.Exercise)
            ? new(harder, Reps.Each(f.Slot.Scheme, Reps.Low(f.Slot.Scheme)), new(
                Reasons.ClimbBack, $"climbing back to {old}: {LoadText.Harder(load, harder, f.Exercise)} each time")
            {
                Inputs = [new("oldLoad", old.Amount, old.Symbol)],
            })
            : null;
    }

    /// <summary>The load before the long lay-off, where every session since then earned something.</summary>
    private static Mass? OldLoad(Footing f) =>
        f.Gaps.ReturnAfter(LayOff.RestartDays) is { } back && f.Around(back) is var (before, since)
        && since.Count > 0 && since.All(p => Judge.Of(p, f.Exercise) is Verdict.Met or Verdict.WithinRange)
            ? LoadUsed.Of(before, f.Exercise)
            : null;
}
