using RackSide.Training.Measures;

namespace RackSide.Training.Kit;

/// <summary>A belt that plates hang from.</summary>
/// <param name="Mass">Its mass with its chain, which counts with what hangs from it; null where it is not counted.</param>
public sealed record Belt(Mass? Mass);
