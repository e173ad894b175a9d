using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Progression;

/// <summary>The load a performance stands for.</summary>
public static class LoadUsed
{
    /// <summary>
    /// The load that most sets used, which is not the one asked for where the lifter changed it; among equally many, the
    /// easier. Null where no set tells a load.
    /// </summary>
    public static Mass? Of(Performance performance, Exercise exercise) => performance.Sets[0].Set.Load is var first && performance.Sets.All(s => s.Set.Load == first)
        ? first
        : MostUsed(performance, exercise);

    private static Mass? MostUsed(Performance performance, Exercise exercise) => performance.Sets
        .Select(s => s.Set.Load)
        .Where(load => load is not null)
        .GroupBy(load => load!.Value)
        .OrderByDescending(sets => sets.Count())
        .ThenBy(sets => exercise.LoadType == LoadType.Assisted ? -sets.Key.Kilograms : sets.Key.Kilograms)
        .Select(sets => (Mass?)sets.Key)
        .FirstOrDefault();

    /// <summary>Whether one load is harder than another; help makes it easier.</summary>
    public static bool IsHarder(Mass? load, Mass? than, Exercise exercise) =>
        exercise.LoadType == LoadType.Assisted ? load < than : load > than;
}
