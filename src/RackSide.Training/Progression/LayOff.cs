using RackSide.Training.Exercises;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>
/// Coming back after days without an exercise. Common practice, no source; the published loss (about none in a week or
/// two, 7 to 15 per cent in eight weeks) is a rough envelope of several trials, and these cuts stay on its safe side:
/// up to 7 days carry on; 8-14 the last load again; 15-28 ten per cent off; 29-56 twenty; longer, about half.
/// </summary>
internal static class LayOff
{
    private const int CarryOnDays = 7, RepeatDays = 14, TenPercentDays = 28, TwentyPercentDays = 56;

    private const int HoldStepSeconds = 5;

    /// <summary>What the gap alone decides, or null where it leaves the word to the plan's rule.</summary>
    public static Decision? Next(Footing f) => f.Gap switch
    {
        <= CarryOnDays => null,
        <= RepeatDays => f.Verdict is Verdict.Met or Verdict.WithinRange ? Repeat(f) : null,
        <= TenPercentDays => Lighter(f, 10),
        <= TwentyPercentDays => Lighter(f, 20),
        _ => Lighter(f, 50),
    };

    private static Decision Repeat(Footing f) => new(
        f.Load,
        Reps.Each(f.Slot.Scheme, f.Asked),
        new(Reasons.ShortGap, $"{f.Gap} days since {f.On}: {LoadText.Same(f.Load, f.Exercise)}"));

    private static Decision Lighter(Footing f, int percent)
    {
        var load = f.Load is { } from ? f.Moves!.Easier(from, percent) : f.Load;
        return new(load, Targets(f, percent), new(Reasons.LayOff, $"{f.Gap} days since {f.On}: {Words(f, load, percent)}"));
    }

    private static IReadOnlyList<int> Targets(Footing f, int percent) => f.Slot.Scheme is Scheme.Hold
        ? Reps.Each(f.Slot.Scheme, f.Asked * (100 - percent) / 100 / HoldStepSeconds * HoldStepSeconds)
        : Reps.Each(f.Slot.Scheme, Reps.Low(f.Slot.Scheme));

    private static string Words(Footing f, Mass? load, int percent) => (f.Load, load) switch
    {
        ({ } from, { } to) when to == from => $"the {(IsHelp(f) ? "most help" : "lightest load")} there is, {to}",
        ({ } from, { } to) when percent < 50 || IsHelp(f) || to > from * 0.5m =>
            LoadText.Easier(from, to, percent, f.Exercise),
        (_, { } to) => $"about half, {to}, then climb each time",
        _ => f.Slot.Scheme is Scheme.Hold ? "shorter holds, then climb again" : "few reps, then climb again",
    };

    private static bool IsHelp(Footing f) => f.Exercise.LoadType == LoadType.Assisted;
}
