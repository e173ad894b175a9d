namespace RackSide.Training.Progression;

/// <summary>
/// All sets done at the target with honest form: one step more. Any set short: the same load again. This is the session
/// rule of common practice, looser than the handbook's two reps over in two sessions running; trade sources differ.
/// </summary>
internal static class StepWhenAllMet
{
    public static Decision Next(Footing f) =>
        f.MissedTooOften ? TooManyMisses.Next(f)
        : f.Verdict == Verdict.Met ? StepUp.Next(f, Reasons.AllMet, $"all {Reps.Text(f.Last.Asked)} done")
        : f.Verdict == Verdict.WithinRange && RepsFirst.IsSpent(f) ? StepUp.Next(f, Reasons.AllMet, $"all {f.Slot.Scheme.Text} done")
        : f.Verdict == Verdict.WithinRange ? RepsFirst.Again(f)
        : Again.After(f, Reps.Each(f.Slot.Scheme, f.Verdict == Verdict.Missed ? Reps.Low(f.Slot.Scheme) : f.Asked));
}
