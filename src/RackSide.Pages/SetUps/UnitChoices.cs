using System.Collections.Immutable;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Pages.SetUps;

/// <summary>
/// What is chosen in one unit. Each unit keeps its own, so that looking at the other one loses nothing.
/// </summary>
/// <param name="Bar">The bar's place in <see cref="KitDefaults.Bars"/>.</param>
/// <param name="Plates">All usual plates with their pairs, heaviest first.</param>
/// <param name="StackStep">The step's place in <see cref="KitOption.StackSteps"/>.</param>
public sealed record UnitChoices(int Bar, ImmutableArray<PlatePairs> Plates, int StackStep)
{
    /// <summary>More pairs of one plate than this would not fit on a sleeve.</summary>
    public const int MostPairs = 20;

    /// <summary>The choices before any is made.</summary>
    public static UnitChoices Default(MassUnit unit) => new(0, [.. KitDefaults.Plates(unit)], 1);

    /// <summary>The same with another count of one plate, held between 0 and <see cref="MostPairs"/>.</summary>
    public UnitChoices WithPairs(int line, int pairs) =>
        this with { Plates = Plates.SetItem(line, Plates[line] with { Pairs = Math.Clamp(pairs, 0, MostPairs) }) };
}
