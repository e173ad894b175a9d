using RackSide.Training.History;

namespace RackSide.Training.Progression;

/// <summary>
/// The cautious rule: a step only where the last set went two reps or more over the goal in two consecutive performed
/// sessions at the load (NSCA, Essentials of Strength Training and Conditioning, the 2-for-2 rule, seen in second-hand
/// copies). All sets must have reached the goal with honest form, which is common practice. A date that was missed was not
/// performed, so it ends nothing; a session cut short says nothing and is passed over, as it is when misses are counted.
/// </summary>
internal static class TwoForTwo
{
    /// <summary>Reps over the goal.</summary>
    public const int RepsOver = 2;

    private const int Sessions = 2;

    public static Decision Next(Footing f) =>
        f.MissedTooOften ? TooManyMisses.Next(f)
        : f.Verdict is not (Verdict.Met or Verdict.WithinRange) ? Again.After(f, Goal(f))
        : f.TimesOver(RepsOver) >= Sessions ? StepUp.Next(f, Reasons.TwoForTwo, "two reps over, twice running, last")
        : Hold(f);

    private static Decision Hold(Footing f)
    {
        var same = LoadText.Same(f.Load, f.Exercise);
        var why = f.TimesOver(RepsOver) > 0
            ? new Reason(Reasons.TwoOverOnce, $"two over in the last set on {f.On}: {same}, once more so")
            : new Reason(Reasons.GoalMet, $"{Reps.Text(f.Last.Asked)} done on {f.On}: {same}, until the last set goes two over");
        return new(f.Load, Goal(f), why.Advise($"in the last set go on past {Reps.Low(f.Slot.Scheme)} while every rep is good"));
    }

    private static IReadOnlyList<int> Goal(Footing f) => Reps.Each(f.Slot.Scheme, Reps.Low(f.Slot.Scheme));
}
