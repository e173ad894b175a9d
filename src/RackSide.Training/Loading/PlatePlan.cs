using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>The stacks for a row of sets, and what they cost.</summary>
/// <param name="Stacks">One for each set of the job, inside to outside.</param>
/// <param name="Handled">
/// How often a plate is put on or taken off one sleeve, from the start stack to the bare bar (or to the last stack, where
/// the bar is not stripped); both sleeves together take twice as many.
/// </param>
/// <param name="PlatesOn">The plates on one sleeve, added up over the sets.</param>
/// <param name="DeviationKilograms">How far the loads are from their ideals, added up over the sets; exact.</param>
public sealed record PlatePlan(
    IReadOnlyList<IReadOnlyList<Mass>> Stacks, int Handled, int PlatesOn, decimal DeviationKilograms);
