using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>A set to be loaded on a bar.</summary>
/// <param name="Load">Its load, bar included.</param>
/// <param name="Exercise">Its exercise, which may have a bar of its own; null for the bars kept for none.</param>
public readonly record struct BarSet(Mass Load, Exercise? Exercise);
