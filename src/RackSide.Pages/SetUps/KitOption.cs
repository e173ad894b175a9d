using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Pages.SetUps;

/// <summary>Something a gym may own beside bar and plates.</summary>
/// <param name="Word">What the catalogue and the kit call it.</param>
/// <param name="Label">What the set-up calls it.</param>
public sealed record KitOption(string Word, string Label)
{
    /// <summary>The word of the weight stack, which has a step.</summary>
    public const string CableStack = "cable stack";

    /// <summary>The word of the dumbbells, which have masses.</summary>
    public const string Dumbbells = "dumbbells";

    // Common practice, no source: twenty plates make the stack of a usual cable column.
    private const int StackPlates = 20;

    /// <summary>What is asked about, in the order shown; nine, so that one digit reaches each.</summary>
    public static IReadOnlyList<KitOption> All { get; } =
    [
        new("rack", "rack"),
        new("safety bars", "safety bars in the rack"),
        new("bench", "bench"),
        new("pull-up bar", "pull-up bar"),
        new(Dumbbells, "dumbbells"),
        new(CableStack, "cable stack"),
        new("band", "bands"),
        new("box", "box or step"),
        new("mat", "mat"),
    ];

    /// <summary>The steps a cable stack may have in that unit; the usual one second. Common practice, no source.</summary>
    public static IReadOnlyList<Mass> StackSteps(MassUnit unit) => unit == MassUnit.Kilogram
        ? [Mass.Kg(2.5m), Mass.Kg(5), Mass.Kg(7.5m), Mass.Kg(10)]
        : [Mass.Lb(5), Mass.Lb(10), Mass.Lb(15), Mass.Lb(20)];

    /// <summary>The positions of a stack with that step, lightest first.</summary>
    public static IReadOnlyList<Mass> Stack(Mass step) => [.. Enumerable.Range(1, StackPlates).Select(plates => step * plates)];

    /// <summary>The words ticked to begin with: what the default kit of that unit owns.</summary>
    public static IEnumerable<string> TickedAtFirst(MassUnit unit) =>
        All.Select(option => option.Word).Where(KitDefaults.For(unit).Equipment.Contains);
}
