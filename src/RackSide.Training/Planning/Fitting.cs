using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Plans;
using RackSide.Training.Skills;

namespace RackSide.Training.Planning;

/// <summary>Which exercises can fill a slot here, for this lifter.</summary>
internal static class Fitting
{
    /// <summary>Those the slot lists first, in its order, then all others of its motion, in catalogue order.</summary>
    public static IEnumerable<Exercise> For(Slot slot, Catalogue catalogue, KitLoads gym, Lifter lifter, TrainingHistory history) => slot.Exercises
        .Select(catalogue.Find)
        .OfType<Exercise>()
        .Concat(catalogue.Of(slot.Motion).Where(e => ToldAlike(slot, e)))
        .DistinctBy(e => e.Id)
        .Where(e => Allowed(e, gym, lifter, history));

    /// <summary>The rungs of a slot's ladder that are open here for this lifter, easiest first.</summary>
    public static IReadOnlyList<Exercise> Rungs(Ladder ladder, Catalogue catalogue, KitLoads gym, Lifter lifter, TrainingHistory history) =>
        [.. ladder.Rungs.Select(r => catalogue.Find(r.Exercise)).OfType<Exercise>().Where(e => Allowed(e, gym, lifter, history))];

    /// <summary>
    /// Whether everything it needs is here, a load can be had where it needs one, and head-down work is open to the lifter.
    /// </summary>
    private static bool Allowed(Exercise exercise, KitLoads gym, Lifter lifter, TrainingHistory history) =>
        exercise.Equipment.All(gym.Kit.Equipment.Contains)
        && (!exercise.IsLoaded || gym.AnyFor(exercise))
        && HeadDown.IsOpen(exercise, lifter, history);

    /// <summary>Whether slot and exercise are both told in seconds or both in reps; a tick and work by time take either.</summary>
    private static bool ToldAlike(Slot slot, Exercise exercise) =>
        slot.Scheme is Scheme.Tick or Scheme.Accumulate || exercise.Held == slot.Scheme is Scheme.Hold;
}
