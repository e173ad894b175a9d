using RackSide.Training.Exercises;
using RackSide.Training.History;

namespace RackSide.Commands;

/// <summary>Whose history is asked for: an exercise wherever it was done, or a slot with whatever filled it.</summary>
/// <param name="Name">The name people read.</param>
/// <param name="Exercise">The exercise; null where a slot is asked for.</param>
/// <param name="Slot">The slot's key; null where an exercise is asked for.</param>
internal sealed record ExerciseAsked(string Name, Exercise? Exercise, string? Slot)
{
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
