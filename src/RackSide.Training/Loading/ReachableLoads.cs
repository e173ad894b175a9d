using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>
/// The loads one kit can give one exercise. Nothing else is ever prescribed, so every question about "the next load" or
/// "ten per cent less" ends here. Loads in different units compare by their exact mass.
/// </summary>
public sealed class ReachableLoads
{
    private readonly Mass[] loads;

    /// <summary>The loads in any order; of equal ones the first is kept.</summary>
    /// <exception cref="ArgumentException">There are none; a kit that gives no load is told as null, not as an empty list.</exception>
    public ReachableLoads(IEnumerable<Mass> loads)
    {
        this.loads = [.. loads.DistinctBy(l => l.Kilograms).Order()];
        if (this.loads.Length == 0)
        {
            throw new ArgumentException("no load is reachable", nameof(loads));
        }
    }

    /// <summary>Every load, lightest first, no two alike.</summary>
    public IReadOnlyList<Mass> All => loads;

    /// <summary>The lightest load.</summary>
    public Mass Lightest => loads[0];

    /// <summary>The heaviest load.</summary>
    public Mass Heaviest => loads[^1];

    /// <summary>The load closest to a target; halfway between two it is the lighter one.</summary>
    public Mass Nearest(Mass target)
    {
        var (below, above) = (AtOrBelow(target), AtOrAbove(target));
        var down = Math.Abs(target.Kilograms - below.Kilograms);
        var up = Math.Abs(above.Kilograms - target.Kilograms);
        return up < down ? above : below;
    }

    /// <summary>The heaviest load that is no heavier than a target; the lightest of all where every load is heavier.</summary>
    public Mass AtOrBelow(Mass target) => loads[Math.Max(CountAtOrBelow(target) - 1, 0)];

    /// <summary>The lightest load that is no lighter than a target; the heaviest of all where every load is lighter.</summary>
    public Mass AtOrAbove(Mass target) => loads[Math.Min(CountBelow(target), loads.Length - 1)];

    /// <summary>The next heavier load, or null where there is none.</summary>
    public Mass? Above(Mass load) => CountAtOrBelow(load) is var i && i < loads.Length ? loads[i] : null;

    /// <summary>The next lighter load, or null where there is none.</summary>
    public Mass? Below(Mass load) => CountBelow(load) is var i && i > 0 ? loads[i - 1] : null;

    /// <summary>Whether exactly this load can be had.</summary>
    public bool Has(Mass load) => Array.BinarySearch(loads, load) >= 0;

    private int CountBelow(Mass target) => Array.BinarySearch(loads, target) is var i && i >= 0 ? i : ~i;

    private int CountAtOrBelow(Mass target) => CountBelow(target) + (Has(target) ? 1 : 0);
}
