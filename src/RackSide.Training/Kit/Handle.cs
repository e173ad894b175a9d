using RackSide.Training.Measures;

namespace RackSide.Training.Kit;

/// <summary>Adjustable dumbbells: short handles alike that plates go on.</summary>
/// <param name="Bar">One handle: its name, its mass with its collars, the room on one end.</param>
/// <param name="Count">How many of them there are; 1 or more. Two or more make a pair.</param>
public sealed record Handle(Bar Bar, int Count)
{
    /// <summary>The plates that fit it, where they are not those of the bars; a pair is one for each end of one handle.</summary>
    public IReadOnlyList<PlatePairs>? Plates { get; init; }
}
