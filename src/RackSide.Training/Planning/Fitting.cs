using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Plans;

namespace RackSide.Training.Planning;

/// <summary>Which exercises can fill a slot here, for this lifter.</summary>
internal static class Fitting
{
    /// <summary>Those the slot lists first, in its order, then all others of its motion, in catalogue order.</summary>
    public static IEnumerable<Exercise> For(Slot slot, Catalogue catalogue, GymKit kit, Lifter lifter) => slot.Exercises
        .Select(catalogue.Find)
        .OfType<Exercise>()
        .Concat(catalogue.Of(slot.Motion).Where(e => ToldAlike(slot, e)))
        .DistinctBy(e => e.Id)
        .Where(e => Allowed(e, kit, lifter));

    /// <summary>
    /// Whether everything it needs is here, a load can be had where it needs one, and it does not put the head below the
    /// heart of a lifter who is to avoid that.
    /// </summary>
    private static bool Allowed(Exercise exercise, GymKit kit, Lifter lifter) =>
        exercise.Equipment.All(kit.Equipment.Contains)
        && (!exercise.IsLoaded || Loads.AnyFor(exercise, kit))
        && !(exercise.Inverted && lifter.AvoidInverted);

    /// <summary>Whether slot and exercise are both told in seconds or both in reps; a tick is told in neither.</summary>
    private static bool ToldAlike(Slot slot, Exercise exercise) =>
        slot.Scheme is Scheme.Tick || exercise.Held == slot.Scheme is Scheme.Hold;
}
