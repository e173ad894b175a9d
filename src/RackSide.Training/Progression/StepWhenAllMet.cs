namespace RackSide.Training.Progression;

/// <summary>
/// All sets done at the target with honest form: one step more. Any set short: the same load again. This is the session
/// rule of common practice, looser than the handbook's two reps over in two sessions running; trade sources differ.
/// </summary>
internal static class StepWhenAllMet
{
    public static Decision Next(Footing f) =>
        f.MissedTooOften ? TooManyMisses.Next(f)
        : f.Verdict == Verdict.Met ? StepUp.Next(f, Reasons.AllMet, $"all {f.Last.Asked.Scheme.Text} done")
        : Again.After(f, Reps.Each(f.Slot.Scheme, Reps.Low(f.Slot.Scheme)));
}
