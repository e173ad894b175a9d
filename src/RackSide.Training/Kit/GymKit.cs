using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Training.Kit;

/// <summary>What this gym owns. Loads are only ever prescribed from here.</summary>
public sealed record GymKit
{
    /// <summary>The unit the plates are marked in.</summary>
    public required MassUnit Unit { get; init; }

    /// <summary>Bars, the one used by default first; never empty.</summary>
    public required IReadOnlyList<Bar> Bars { get; init; }

    /// <summary>Plates by mass, heaviest first.</summary>
    public required IReadOnlyList<PlatePairs> Plates { get; init; }

    /// <summary>Dumbbells, the mass of one, each owned as a pair, lightest first.</summary>
    public IReadOnlyList<Mass> Dumbbells { get; init; } = [];

    /// <summary>Positions of the weight stack, lightest first; empty where there is no machine.</summary>
    public IReadOnlyList<Mass> Stack { get; init; } = [];

    /// <summary>Things without a mass, in the catalogue's words: rack, bench, pull-up bar, safety bars, mat …</summary>
    public IReadOnlySet<string> Equipment { get; init; } = new HashSet<string>();

    /// <summary>The bar used where nothing else is said.</summary>
    public Bar MainBar => Bars[0];
}
