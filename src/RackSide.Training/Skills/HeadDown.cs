using RackSide.Training.Exercises;
using RackSide.Training.History;

namespace RackSide.Training.Skills;

/// <summary>
/// Who is offered work with the head below the heart: nobody who told something that makes it risky (at the set-up, or
/// before the first such hold), and nobody before the hold that the exercise needs was held once with honest form. Why it is
/// risky: a headstand doubled the pressure in the eye (Baskaran et al. 2006, Ophthalmology 113:1327-1332; Jasien et al.
/// 2015, PLoS One 10:e0144505, back after two minutes). The 30 s of plank: common practice, no source.
/// </summary>
public static class HeadDown
{
    /// <summary>Whether the lifter is to stay on the floor. The latest answer counts, and "yes" at the set-up until another answer.</summary>
    public static bool IsAvoided(Lifter lifter, TrainingHistory history) =>
        history.HeadDown.LastOrDefault() is { } told ? told.Floor : lifter.AvoidInverted;

    /// <summary>Whether the question before the first head-down hold was answered, and with it the way down taught.</summary>
    public static bool IsTaught(TrainingHistory history) => history.HeadDown.Any(told => !told.Floor);

    /// <summary>Whether an exercise is open to a lifter.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="lifter">Who trains.</param>
    /// <param name="history">All the lifter's sessions.</param>
    public static bool IsOpen(Exercise exercise, Lifter lifter, TrainingHistory history) =>
        !(exercise.Inverted && IsAvoided(lifter, history))
        && (exercise.Needs is not { } needed || Longest(needed.Exercise, history) >= needed.Seconds);

    /// <summary>The longest hold of an exercise with honest form, in seconds; 0 where there is none.</summary>
    public static int Longest(string exercise, TrainingHistory history) => history.Of(exercise)
        .SelectMany(p => p.Sets)
        .Where(s => s.Set.Kind is SetKind.Hold or SetKind.HeldShare && !s.FormSlipped)
        .Select(s => s.Set.Done)
        .DefaultIfEmpty()
        .Max();
}
