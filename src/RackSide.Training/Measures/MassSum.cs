namespace RackSide.Training.Measures;

/// <summary>Adds things as they were marked.</summary>
internal static class MassSum
{
    /// <summary>
    /// In the unit all are marked in; where both units meet it is in kilograms, the unit in which a pound is an exact
    /// number.
    /// </summary>
    /// <param name="masses">At least one.</param>
    public static Mass Of(IReadOnlyList<Mass> masses) => Mixed(masses)
        ? Mass.Kg(masses.Sum(m => m.Kilograms))
        : new(masses.Sum(m => m.Amount), masses[0].Unit);

    /// <summary>Whether both units meet.</summary>
    public static bool Mixed(IReadOnlyList<Mass> masses) => masses.Any(m => m.Unit != masses[0].Unit);
}
