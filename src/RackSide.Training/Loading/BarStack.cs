using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>A loaded bar.</summary>
/// <param name="Bar">The bar.</param>
/// <param name="Side">The stack: the plates on one sleeve, inside to outside, heaviest inside; the other sleeve has the same.</param>
public sealed record BarStack(Bar Bar, IReadOnlyList<Mass> Side)
{
    /// <summary>Whether both units meet on it, so that every number needs its own.</summary>
    public bool NamesUnits => MassSum.Mixed([Bar.Bare, .. Side]);

    /// <summary>Bar and both stacks, in the unit they are all marked in; in kilograms where they are of both units.</summary>
    public Mass Total => MassSum.Of([Bar.Mass, .. Side, .. Side]);
}
