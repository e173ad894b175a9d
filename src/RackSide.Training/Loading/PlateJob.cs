using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>A row of sets on one bar, to be loaded with as little handling of plates as can be.</summary>
public sealed record PlateJob
{
    /// <summary>The mass of the bar with whatever is always on it.</summary>
    public required Mass Bar { get; init; }

    /// <summary>The plate pairs there are, those already on the bar among them; one plate of a pair goes on each sleeve.</summary>
    public required IReadOnlyList<PlatePairs> Plates { get; init; }

    /// <summary>The sets in the order they are done, every one of them named, also where several in a row are alike.</summary>
    public required IReadOnlyList<LoadBand> Sets { get; init; }

    /// <summary>The stack that is on each sleeve before the first set, inside to outside; empty for a bare bar.</summary>
    public IReadOnlyList<Mass> Start { get; init; } = [];

    /// <summary>Whether the bar is bare again after the last set; otherwise its last plates stay on and that costs nothing.</summary>
    public bool StrippedAtEnd { get; init; } = true;

    /// <summary>
    /// Whether a plate must be no heavier than the one inside it. It is so at the rack: a large disc outside a small one
    /// hangs on the lip of its hole, hides the small one and makes it easy to misread the load, and a stack that runs down
    /// in size reads at a glance. Without it a row of sets may need fewer plates handled.
    /// A start stack that breaks this is taken as it is.
    /// </summary>
    public bool HeaviestInside { get; init; } = true;

    /// <summary>The most plates one sleeve takes, or null where that is not told.</summary>
    public int? Room { get; init; }

    /// <summary>The room on one sleeve in millimetres, for plates whose thickness is told; null where it is not told.</summary>
    public decimal? Sleeve { get; init; }

    /// <summary>A row of sets on a gym's bar.</summary>
    /// <param name="bar">The bar they are all done with.</param>
    /// <param name="kit">The gym, for its plates.</param>
    /// <param name="sets">The sets.</param>
    /// <param name="onBar">The loaded bar that is at hand; another bar than this one does not count.</param>
    internal static PlateJob On(Bar bar, GymKit kit, IReadOnlyList<LoadBand> sets, BarStack? onBar) => new()
    {
        Bar = bar.Mass,
        Plates = kit.Plates,
        Sets = sets,
        Sleeve = bar.Sleeve,
        Start = onBar?.Bar == bar ? onBar.Side : [],
    };
}
