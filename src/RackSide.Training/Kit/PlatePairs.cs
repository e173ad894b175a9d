using RackSide.Training.Measures;

namespace RackSide.Training.Kit;

/// <summary>Plates of one mass. They are counted in pairs, because one goes on each sleeve.</summary>
/// <param name="Mass">The mass of one plate, as it is marked.</param>
/// <param name="Pairs">How many pairs the gym owns; 0 or more.</param>
public sealed record PlatePairs(Mass Mass, int Pairs)
{
    /// <summary>How much of a sleeve one takes, in millimetres; null where it is not told, and then it counts as nothing.</summary>
    public decimal? Thickness { get; init; }
}
