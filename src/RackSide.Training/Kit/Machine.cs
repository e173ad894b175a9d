using RackSide.Training.Measures;

namespace RackSide.Training.Kit;

/// <summary>A machine with a stack of its own.</summary>
/// <param name="Name">The word of the exercise catalogue: <c>leg press</c>, <c>cable stack</c>.</param>
/// <param name="Positions">The pin's positions, lightest first.</param>
/// <param name="AddOns">Small plates that are laid on the stack, one entry for each there is; any of them together.</param>
public sealed record Machine(string Name, IReadOnlyList<Mass> Positions, IReadOnlyList<Mass> AddOns);
