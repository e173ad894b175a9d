using RackSide.Training.Measures;

namespace RackSide.Training.Kit;

/// <summary>A bar that plates go on.</summary>
/// <param name="Name">What the gym calls it.</param>
/// <param name="Mass">Its mass with whatever collars are always on it.</param>
public sealed record Bar(string Name, Mass Mass);
