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
    /// Dumbbells and weight stack: as the kit lists them.
    /// Added weight: nothing, or single plates hung together up to 100 kg, or one dumbbell.
    /// Assisted: help from none to 60 kg in steps of 5 kg, or to 130 lb in steps of 10 lb (bands or a machine; common
    /// practice, no source). Less help is harder: the caller turns the direction round.
    /// </summary>
    /// <returns>The loads; null where no load is told for the exercise or the kit has nothing to load it with.</returns>
    public static ReachableLoads? For(Exercise exercise, GymKit kit)
    {
        List<Mass> loads = [.. Of(exercise.LoadType, kit)];
        return loads.Count > 0 ? new(loads) : null;
    }

    /// <summary>Whether there are any, without making the list of them.</summary>
    public static bool AnyFor(Exercise exercise, GymKit kit) =>
        exercise.LoadType == LoadType.Barbell ? kit.Bars.Count > 0 : Of(exercise.LoadType, kit).Any();

    private static IEnumerable<Mass> Of(LoadType type, GymKit kit) => type switch
    {
        LoadType.Barbell when kit.Bars.Count > 0 => new BarTable(kit).Loads,
        LoadType.DumbbellPair or LoadType.DumbbellSingle => kit.Dumbbells,
        LoadType.MachineStack => kit.Stack,
        LoadType.AddedWeight => [.. Hung(kit), .. kit.Dumbbells],
        LoadType.Assisted => Help(kit.Unit),
        _ => [],
    };

    /// <summary>On a belt plates hang singly, so a pair counts as two.</summary>
    private static IEnumerable<Mass> Hung(GymKit kit) => SideStacks
        .Of(kit.Plates.Select(p => (p.Mass, 2 * p.Pairs)), MostHungKilograms)
        .Values.Select(plates => plates.Count > 0 ? MassSum.Of(plates) : Mass.Zero(kit.Unit));

    private static IEnumerable<Mass> Help(MassUnit unit)
    {
        var (step, most) = unit == MassUnit.Kilogram ? (5, MostHelpKilograms) : (10, MostHelpPounds);
        return Enumerable.Range(0, (most / step) + 1).Select(i => new Mass(i * step, unit));
    }
}
