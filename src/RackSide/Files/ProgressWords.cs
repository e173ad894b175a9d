using RackSide.Training.Plans;

namespace RackSide.Files;

/// <summary>A rule of progress as a plan file writes it.</summary>
/// <param name="Word">The words of <c>progress</c>.</param>
/// <param name="Kind">The rule.</param>
/// <param name="Fits">Whether it can move such sets on.</param>
/// <param name="Fields">The fields beside <c>progress</c> that have an effect with it.</param>
internal sealed record ProgressWord(string Word, ProgressKind Kind, Func<Scheme, bool> Fits, params string[] Fields);

/// <summary>Every rule of progress that a plan file can name, in the order they are told.</summary>
internal static class ProgressWords
{
    private const string Step = "step", Misses = "misses_before_lighter", Lighter = "lighter_by";

    /// <summary>A new rule has a row here, and its arithmetic a file in Progression.</summary>
    public static IReadOnlyList<ProgressWord> All { get; } =
    [
        new("step when all met", ProgressKind.StepWhenAllMet, s => s is Scheme.Fixed, Step, Misses, Lighter, "reps_first"),
        new("work up the range", ProgressKind.WorkUpRange, s => s is Scheme.Range, Step, Misses, Lighter),
        new("longer hold", ProgressKind.LongerHold, s => s is Scheme.Hold or Scheme.Accumulate),
        new("2 for 2", ProgressKind.TwoForTwo, s => s is Scheme.Fixed, Step, Misses, Lighter),
        new("grow total", ProgressKind.GrowTotal, s => s is Scheme.Total, "grow_by", "up_to"),
        new("none", ProgressKind.None, _ => true),
    ];

    /// <summary>The row of a rule.</summary>
    public static ProgressWord Of(ProgressKind kind) => All.Single(w => w.Kind == kind);
}
