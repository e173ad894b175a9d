using RackSide.Training.History;

namespace RackSide.Training.Progression;

/// <summary>The same load again, and the reason for it. These answers are alike in every rule.</summary>
internal static class Again
{
    /// <summary>What follows a performance that earned nothing, however the rule counts.</summary>
    /// <param name="footing">Where the lifter stands.</param>
    /// <param name="targets">Reps or seconds of each set next time.</param>
    public static Decision After(Footing footing, IReadOnlyList<int> targets) =>
        new(footing.Load, targets, Why(footing).Advise(Fault(footing)).Advise(Rest(footing)));

    private static Reason Why(Footing f)
    {
        var same = LoadText.Same(f.Load, f.Exercise);
        return f.Verdict switch
        {
            Verdict.FormSlipped when f.SlippedTwice =>
                new(Reasons.FormSlippedAgain, $"form slipped two times running: {same}, read the cue card first"),
            Verdict.FormSlipped => new(Reasons.FormSlipped, $"form slipped on {f.On}: {same}, honest reps first"),
            Verdict.CutShort => new(Reasons.CutShort, $"cut short on {f.On}: {same}, no miss counted"),
            Verdict.MixedLoads =>
                new(Reasons.MixedLoads, $"not every set{LoadText.At(f.Used, f.Exercise)} on {f.On}: {same}"),
            _ when f.Misses > 1 =>
                new(Reasons.Miss, $"{LoadText.Ordinal(f.Misses)} miss{LoadText.At(f.Used, f.Exercise)}, on {f.On}: {same}"),
            _ => new(Reasons.Miss, $"short of {Reps.Text(f.Last.Asked)} on {f.On}: {same}"),
        };
    }

    /// <summary>What mends it, where form slipped in two sessions running, whether or not a set was missed as well.</summary>
    private static string? Fault(Footing f) => f.SlippedTwice ? $"watch for: {f.Exercise.Cues.Fault}" : null;

    private static string? Rest(Footing f) => f.Verdict == Verdict.Missed ? LongerRest.For(f.Slot, f.Exercise) : null;
}
