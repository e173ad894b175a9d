using RackSide.Training.Measures;

namespace RackSide.Training.Kit;

/// <summary>
/// A modest home set to begin from, and the choices a set-up screen offers. Common practice, no source: which plates a
/// first set holds is the shop's habit, not a rule, so every number here can be changed in the house rules.
/// </summary>
public static class KitDefaults
{
    private static readonly string[] Garage =
    [
        "barbell", "plates", "dumbbells", "rack", "safety bars", "bench", "pull-up bar",
        "mat", "wall", "box", "chair", "band", "broomstick",
    ];

    /// <summary>Every word for a thing a gym can own, the words the exercise catalogue uses; in the order they are offered.</summary>
    public static IReadOnlyList<string> EquipmentWords { get; } =
    [
        .. Garage, "incline bench", "dip bars", "cable stack", "assist machine", "leg press", "row machine",
        "chest press machine", "shoulder press machine", "back-extension bench", "floor pivot", "platform",
        "straps", "towel", "wheel",
    ];

    /// <summary>A garage's kit in that unit: one bar, a home set of plates, light dumbbells, rack, bench and a bar to hang from.</summary>
    public static GymKit For(MassUnit unit) => new()
    {
        Unit = unit,
        Bars = [Bars(unit)[0]],
        Plates = [.. Plates(unit).Where(p => p.Pairs > 0)],
        Dumbbells = Masses(unit, unit == MassUnit.Kilogram ? [2.5m, 5, 7.5m, 10, 12.5m, 15] : [5, 10, 15, 20, 25, 30]),
        Equipment = Garage.ToHashSet(),
    };

    /// <summary>The usual bars in that unit, the commonest first.</summary>
    public static IReadOnlyList<Bar> Bars(MassUnit unit) => unit == MassUnit.Kilogram
        ? [new("bar", Mass.Kg(20)), new("light bar", Mass.Kg(15)), new("training bar", Mass.Kg(10))]
        : [new("bar", Mass.Lb(45)), new("light bar", Mass.Lb(35)), new("metric light bar", Mass.Lb(33))];

    /// <summary>All usual plates in that unit, heaviest first, with the pairs a home set has; 0 for those it lacks.</summary>
    public static IReadOnlyList<PlatePairs> Plates(MassUnit unit) => unit == MassUnit.Kilogram
        ? Pairs(unit, (25, 0), (20, 1), (15, 1), (10, 1), (5, 1), (2.5m, 1), (1.25m, 1), (0.5m, 0))
        : Pairs(unit, (45, 1), (35, 1), (25, 1), (10, 2), (5, 1), (2.5m, 1), (1.25m, 0));

    private static IReadOnlyList<Mass> Masses(MassUnit unit, decimal[] amounts) =>
        [.. amounts.Select(a => new Mass(a, unit))];

    private static IReadOnlyList<PlatePairs> Pairs(MassUnit unit, params (decimal Amount, int Pairs)[] plates) =>
        [.. plates.Select(p => new PlatePairs(new Mass(p.Amount, unit), p.Pairs))];
}
