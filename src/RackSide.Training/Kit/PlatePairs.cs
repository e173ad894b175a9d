using RackSide.Training.Measures;

namespace RackSide.Training.Kit;

/// <summary>Plates of one mass. They are counted in pairs, because one goes on each sleeve.</summary>
/// <param name="Mass">The mass of one plate.</param>
/// <param name="Pairs">How many pairs the gym owns; 0 or more.</param>
public sealed record PlatePairs(Mass Mass, int Pairs);
