using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>The loads that will do for one set.</summary>
/// <param name="Ideal">The load aimed at; it need not be one that can be made, nor lie within the band.</param>
/// <param name="Low">The lightest load that will do, bar included.</param>
/// <param name="High">The heaviest load that will do, bar included.</param>
public readonly record struct LoadBand(Mass Ideal, Mass Low, Mass High)
{
    /// <summary>A set whose load is settled, as that of a working set always is.</summary>
    public static LoadBand Exactly(Mass load) => new(load, load, load);
}
