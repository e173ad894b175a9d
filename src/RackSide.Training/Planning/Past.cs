using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Planning;

/// <summary>The history as the calendar and the rules of progress need it.</summary>
public static class Past
{
    /// <summary>
    /// The training days done: sessions with a working set, hold, share or slot ticked, and skills sessions closed, whose
    /// log is optional. A session begun and left before its first working set is not a day trained.
    /// </summary>
    public static IReadOnlyList<DayDone> Days(TrainingHistory history) =>
    [
        .. history.Sessions.Where(s => s.Trained).Select(s => (s.Head.Id, Day: new DayDone(s.Date, s.Head.DayKey)))
            .Concat(history.Earlier.Where(c => c.Trained).Select(c => (c.Id, Day: new DayDone(c.Date, c.DayKey))))
            .OrderBy(d => d.Id)
            .Select(d => d.Day),
    ];

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
