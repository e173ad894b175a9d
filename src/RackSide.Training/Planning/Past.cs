using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Planning;

/// <summary>The history as the calendar and the rules of progress need it.</summary>
public static class Past
{
    /// <summary>The days away that were told and not taken back.</summary>
    public static IReadOnlyList<DaysAway> Away(TrainingHistory history) =>
        [.. history.Told.OfType<AwayTold>().Select(a => new DaysAway(a.From, a.Until))];

    /// <summary>
    /// The performances of an exercise in a slot; where there are none, those in other slots with the same scheme, so that
    /// a slot renamed or moved to another day does not send a lifter back to the empty bar.
    /// </summary>
    public static IReadOnlyList<Performance> Of(TrainingHistory history, Exercise exercise, Slot slot)
    {
        var here = history.Of(exercise.Id, slot.Key).ToList();
        return here.Count > 0 ? here : [.. history.Of(exercise.Id).Where(p => p.Asked.Scheme == slot.Scheme)];
    }
}
