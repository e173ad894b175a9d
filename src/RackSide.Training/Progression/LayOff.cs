using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Progression;

/// <summary>
/// Coming back after days without a motion. Common practice, no source; the published loss (about none in a week or two, 7
/// to 15 per cent in eight weeks) is a rough envelope of several trials, and these cuts stay on its safe side: up to 7 days
/// carry on; 8-14 the last load again; 15-28 ten per cent off; 29-56 twenty; longer, about half.
/// <para>
/// The days are those since the motion was last trained on a strength day, by whatever exercise. An exercise whose motion
/// was trained otherwise keeps its own load: after more than a week without it that load comes again, after more than eight
/// weeks with ten per cent off, because the skill of the lift itself has faded. That part is ours.
/// </para>
/// An illness told since the last time counts like its gap, and at least the last load comes again.
/// </summary>
internal static class LayOff
{
    /// <summary>From so many days on the first week back has half the sets.</summary>
    public const int HalfSetsDays = RepeatDays + 1;

    /// <summary>From so many days on a lifter begins again near half.</summary>
    public const int RestartDays = TwentyPercentDays + 1;

    private const int CarryOnDays = 7, RepeatDays = 14, TenPercentDays = 28, TwentyPercentDays = 56;

    private const int HoldStepSeconds = 5;

    /// <summary>What the gap alone decides, or null where it leaves the word to the plan's rule.</summary>
    public static Decision? Next(Footing f) => f.Gaps.Now switch
    {
        <= CarryOnDays => CarriedOn(f),
        <= RepeatDays => Repeat(f, Reasons.ShortGap, $"{f.Gaps.Now} days since {f.Gaps.Last}"),
        <= TenPercentDays => Lighter(f, 10, Since(f)),
        <= TwentyPercentDays => Lighter(f, 20, Since(f)),
        _ => Lighter(f, 50, Since(f)),
    };

    private static Decision? CarriedOn(Footing f) => f.OwnGap switch
    {
        > TwentyPercentDays => Lighter(f, 10, $"{f.OwnGap} days without this exercise"),
        > CarryOnDays => Repeat(f, Reasons.OtherExercise, $"{f.OwnGap} days without this exercise, motion trained"),
        _ => f.Meanwhile.IllSince(f.Last.Date) is { } ill ? Repeat(f, Reasons.AfterIllness, Ill(ill)) : null,
    };

    private static string Since(Footing f) => $"{f.Gaps.Now} days since {f.Gaps.Last}";

    private static string Ill(AwayTold ill) => ill.Until is { } until ? $"ill until {until.Short()}" : $"ill from {ill.From.Short()}";

    /// <summary>A load not earned is repeated in any case, and the rule says why better than the gap does.</summary>
    private static Decision? Repeat(Footing f, string code, string why) => f.Earned
        ? new(f.Load, Reps.Each(f.Slot.Scheme, f.Asked), new(code, $"{why}: {LoadText.Same(f.Load, f.Exercise)}"))
        : null;

    private static Decision Lighter(Footing f, int percent, string why)
    {
        var load = f.Load is { } from ? f.Moves!.Easier(from, percent) : f.Load;
        return new(load, Targets(f, percent), new(Reasons.LayOff, $"{why}: {Words(f, load, percent)}")
        {
            Inputs = [new("percent", percent, "%")],
        });
    }

    private static IReadOnlyList<int> Targets(Footing f, int percent) => f.Slot.Scheme is Scheme.Hold or Scheme.Accumulate
        ? Reps.Each(f.Slot.Scheme, f.Asked * (100 - percent) / 100 / HoldStepSeconds * HoldStepSeconds)
        : Reps.Each(f.Slot.Scheme, Reps.Low(f.Slot.Scheme));

    private static string Words(Footing f, Mass? load, int percent) => (f.Load, load) switch
    {
        ({ } from, { } to) when to == from => $"the {(IsHelp(f) ? "most help" : "lightest load")} there is, {to}",
        ({ } from, { } to) when percent < 50 || IsHelp(f) || to > from * 0.5m =>
            LoadText.Easier(from, to, percent, f.Exercise),
        (_, { } to) => $"about half, {to}, then climb each time",
        _ => f.Slot.Scheme is Scheme.Hold or Scheme.Accumulate ? "shorter holds, then climb again" : "few reps, then climb again",
    };

    private static bool IsHelp(Footing f) => f.Exercise.LoadType == LoadType.Assisted;
}
