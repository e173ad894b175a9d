namespace RackSide.Training.Exercises;

/// <summary>At most five short lines that a lifter can read between sets.</summary>
/// <param name="SetUp">Where to stand, sit or hang.</param>
/// <param name="WayDown">The lowering half, or the hold itself.</param>
/// <param name="WayUp">The raising half, or how to come out of the hold.</param>
/// <param name="Fault">The common fault, and what mends it.</param>
/// <param name="StopIf">When to stop the set.</param>
public sealed record CueCard(string SetUp, string WayDown, string WayUp, string Fault, string StopIf);
