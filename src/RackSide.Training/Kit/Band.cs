using RackSide.Training.Measures;

namespace RackSide.Training.Kit;

/// <summary>An elastic band.</summary>
/// <param name="Name">What the gym calls it.</param>
/// <param name="Help">About how much of a body it carries at the bottom of a pull-up; null where nobody has measured it.</param>
public sealed record Band(string Name, Mass? Help);
