using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Strength;

namespace RackSide.Commands;

/// <summary>Whose history is asked for: an exercise wherever it was done, or a slot with whatever filled it.</summary>
/// <param name="Name">The name people read.</param>
/// <param name="Exercise">The exercise; null where a slot is asked for.</param>
/// <param name="Slot">The slot's key; null where an exercise is asked for.</param>
internal sealed record ExerciseAsked(string Name, Exercise? Exercise, string? Slot)
{
    /// <summary>Whether it was performed in a session, by that session's card.</summary>
    public bool In(SessionCard session) => session.Performed.Any(p => Is(p.Slot, p.Exercise));

    /// <summary>How often it was performed in some sessions.</summary>
    public int Count(IEnumerable<SessionCard> sessions) => sessions.Sum(s => s.Performed.Count(p => Is(p.Slot, p.Exercise)));

    /// <summary>The records of each exercise it was, by the cards of its sessions, oldest first; no session is read for them.</summary>
    public IReadOnlyList<(Exercise Exercise, IReadOnlyList<RepRecord> Records)> Records(Catalogue catalogue, IEnumerable<SessionCard> sessions) =>
    [
        .. from session in sessions
           from lifted in session.Loads
           where Is(lifted.Slot, lifted.Exercise)
           group new RepRecord(lifted.Reps, lifted.Load, session.Date) by lifted.Exercise into same
           let exercise = catalogue.Find(same.Key)
           where exercise is not null
           select (exercise, RepRecord.Of(exercise, same)),
    ];

    private bool Is(string slot, string exercise) => Exercise is { } one ? exercise == one.Id : slot == Slot;

    /// <summary>Its performances, oldest first.</summary>
    public IReadOnlyList<Performance> In(TrainingHistory history) => Exercise is { } one
        ? [.. history.Of(one.Id)]
        : [.. history.Sessions
            .SelectMany(s => s.Prescriptions)
            .Where(p => p.Slot == Slot)
            .Select(p => p.Exercise)
            .Distinct()
            .SelectMany(id => history.Of(id, Slot))
            .OrderBy(p => p.Date)];
}
