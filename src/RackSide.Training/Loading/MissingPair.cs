using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>Finds the one pair of plates that would make a load loadable.</summary>
internal static class MissingPair
{
    /// <summary>
    /// Plates that are commonly sold, lightest first. Kilograms: the discs of IWF TCRR 3.3 and the IPF rules. Pounds: common
    /// practice, no source.
    /// </summary>
    private static readonly decimal[] KilogramPlates = [0.25m, 0.5m, 1, 1.25m, 1.5m, 2, 2.5m, 5, 10, 15, 20, 25];

    private static readonly decimal[] PoundPlates = [0.25m, 0.5m, 1, 1.25m, 2.5m, 5, 10, 25, 35, 45];

    /// <summary>The heaviest plate commonly sold that is no heavier than so much, or null where none is so light.</summary>
    public static Mass? HeaviestUpTo(decimal amount, MassUnit unit) =>
        (unit == MassUnit.Kilogram ? KilogramPlates : PoundPlates).Where(p => p <= amount).Select(p => (Mass?)new Mass(p, unit)).LastOrDefault();

    /// <summary>The lightest such plate in the kit's unit, or null where no single pair would do.</summary>
    public static Missing? For(Mass target, GymKit kit, BarTable table)
    {
        Mass? plate = (kit.Unit == MassUnit.Kilogram ? KilogramPlates : PoundPlates)
            .Select(amount => new Mass(amount, kit.Unit))
            .Where(p => table.CanTake(target, p))
            .Cast<Mass?>()
            .FirstOrDefault();
        return plate is { } p ? new(p, kit.Plates.Any(owned => owned.Pairs > 0 && owned.Mass == p)) : null;
    }
}

/// <summary>A pair of plates that would help.</summary>
/// <param name="Plate">The mass of one.</param>
/// <param name="AnotherOfThem">Whether the gym has such plates, only too few.</param>
internal sealed record Missing(Mass Plate, bool AnotherOfThem);
