using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>Which loads a kit can give an exercise.</summary>
public static class Loads
{
    /// <summary>The most help that is told, in kilograms and in pounds. Common practice, no source.</summary>
    private const int MostHelpKilograms = 60, MostHelpPounds = 130;

    /// <summary>The most that hangs from a belt, in kilograms; far over what a beginner hangs. Common practice, no source.</summary>
    private const int MostHungKilograms = 100;

    /// <summary>
    /// The loads of an exercise by its load type.
    /// Barbell: every sum of bar and plate pairs. A lighter bar than the main one counts only below the empty main bar.
    /// Only the bars kept for the exercise count, or else those kept for none.
    /// Dumbbells: as the kit lists them, and what its handles make. Machines: their positions, and what is laid on.
    /// Added weight: nothing, or single plates hung together up to 100 kg with the belt, or one dumbbell.
    /// Assisted: none, or the positions of the assisting machine; where those are not told, help from none to 60 kg in
    /// steps of 5 kg, or to 130 lb in steps of 10 lb (common practice, no source). Less help is harder: the caller turns
    /// the direction round.
    /// </summary>
    /// <returns>The loads; null where no load is told for the exercise or the kit has nothing to load it with.</returns>
    public static ReachableLoads? For(Exercise exercise, GymKit kit)
    {
        List<Mass> loads = [.. Of(exercise, kit, new(kit, exercise))];
        return loads.Count > 0 ? new(loads) : null;
    }

    /// <summary>The same with the table of its bars at hand.</summary>
    internal static ReachableLoads? From(Exercise exercise, GymKit kit, BarTable table)
    {
        List<Mass> loads = [.. Of(exercise, kit, table)];
        return loads.Count > 0 ? new(loads) : null;
    }

    /// <summary>Whether there are any, without making the list of them.</summary>
    public static bool AnyFor(Exercise exercise, GymKit kit) =>
        exercise.LoadType == LoadType.Barbell ? kit.BarsFor(exercise).Count > 0 : Of(exercise, kit, new(kit, exercise)).Any();

    private static IEnumerable<Mass> Of(Exercise exercise, GymKit kit, BarTable table) => exercise.LoadType switch
    {
        LoadType.Barbell => table.Loads,
        LoadType.DumbbellPair or LoadType.DumbbellSingle => [.. kit.Dumbbells, .. HandleLoading.Loads(exercise.LoadType, kit)],
        LoadType.MachineStack => PinAndAddOns.All(exercise, kit).Select(w => w.Total),
        LoadType.AddedWeight => [.. Hung(kit), .. kit.Dumbbells],
        LoadType.Assisted => Help(exercise, kit),
        _ => [],
    };

    /// <summary>On a belt plates hang singly, so a pair counts as two.</summary>
    private static IEnumerable<Mass> Hung(GymKit kit) => kit.Belt is not { } belt ? [Mass.Zero(kit.Unit)] : SideStacks
        .Of(kit.Plates.Select(p => p with { Pairs = 2 * p.Pairs }), MostHungKilograms)
        .Values.Select(plates => plates.Count == 0 ? Mass.Zero(kit.Unit) : MassSum.Of(belt.Mass is { } own ? [own, .. plates] : plates));

    private static IEnumerable<Mass> Help(Exercise exercise, GymKit kit) =>
        kit.Machines.FirstOrDefault(m => exercise.Equipment.Contains(m.Name)) is not null
            ? [Mass.Zero(kit.Unit), .. PinAndAddOns.All(exercise, kit).Select(w => w.Total)]
            : UsualHelp(kit.Unit);

    private static IEnumerable<Mass> UsualHelp(MassUnit unit)
    {
        var (step, most) = unit == MassUnit.Kilogram ? (5, MostHelpKilograms) : (10, MostHelpPounds);
        return Enumerable.Range(0, (most / step) + 1).Select(i => new Mass(i * step, unit));
    }
}
