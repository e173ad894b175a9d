using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>One warm-up set.</summary>
/// <param name="Load">What is on the bar, or in the hand.</param>
/// <param name="Reps">How many reps.</param>
public sealed record RampSet(Mass Load, int Reps);
