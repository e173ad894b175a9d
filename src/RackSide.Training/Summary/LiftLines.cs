using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Progression;

namespace RackSide.Training.Summary;

/// <summary>Reads the lines of the loaded exercises from prescriptions and history.</summary>
internal static class LiftLines
{
    /// <summary>From how many misses on the word counts them: one is an off day.</summary>
    private const int WorthCounting = 2;

    public static IReadOnlyList<LiftLine> Of(
        IReadOnlyList<Prescription> next, Catalogue catalogue, TrainingHistory history) =>
        [.. next.Where(p => p.Load is not null).Select(p => One(p, catalogue[p.Exercise], history))];

    private static LiftLine One(Prescription next, Exercise exercise, TrainingHistory history)
    {
        var past = history.Of(exercise.Id).Where(p => LoadUsed.Of(p, exercise) is not null).ToList();
        var misses = past.Count == 0 ? 0 : Progress.MissesInARow(exercise, past);
        Mass? began = past.Count == 0 ? null : LoadUsed.Of(past[0], exercise);
        Mass? now = past.Count == 0 ? null : LoadUsed.Of(past[^1], exercise);
        return new LiftLine(
            next.Slot, exercise.Id, exercise.ShortName, began, now, next.Load!.Value, Word(now, next, exercise, misses), misses);
    }

    private static string Word(Mass? now, Prescription next, Exercise exercise, int misses) =>
        now is null ? LiftLine.New
        : LoadUsed.IsHarder(next.Load, now, exercise) ? LiftLine.Up
        : LoadUsed.IsHarder(now, next.Load, exercise) ? LiftLine.Lighter
        : misses >= WorthCounting ? $"{misses} misses"
        : LiftLine.Same;
}
