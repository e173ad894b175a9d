using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;

namespace RackSide.Training.Skills;

/// <summary>
/// The goal of a ladder, such as the first strict pull-up: reached on the day its last rung was done once with honest form.
/// It is a fact of its own, whatever the targets of that rung ask for.
/// </summary>
public static class LadderGoal
{
    /// <summary>The date it was reached; null where it was not yet.</summary>
    public static LocalDate? Reached(Ladder ladder, TrainingHistory history) => history.Of(ladder.Rungs[^1].Exercise)
        .Where(p => p.Sets.Any(s => s.Set.Done > 0 && !s.FormSlipped))
        .OrderBy(p => p.Date)
        .FirstOrDefault()?.Date;
}
