using RackSide.Commands;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Strength;

namespace RackSide.Json;

/// <summary>A set as done.</summary>
internal sealed record SetJson(int Target, int Done, MassJson? Load, bool FormSlipped);

/// <summary>An exercise on one day.</summary>
internal sealed record PerformanceJson(
    string Date, PrescriptionJson Asked, IReadOnlyList<SetJson> Sets, bool TargetsMet, bool CutShort, EstimateJson? OneRepEstimate, IReadOnlyList<string> Notes);

/// <summary>The span of seven formulas for one repetition in whole units, rounded outwards; a lower bound, because working sets stop short of the limit.</summary>
internal sealed record EstimateJson(MassJson Lowest, MassJson Highest);

/// <summary>The hardest load of an exercise for a number of reps; of help, the least.</summary>
internal sealed record RecordJson(ExerciseJson Exercise, int Reps, MassJson Load, string Date);

/// <summary>What <c>rackside history --json</c> prints.</summary>
internal sealed record HistoryJson
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>Whose history; null where nobody has joined.</summary>
    public required string? Lifter { get; init; }

    /// <summary>The exercise asked for; null where a slot was.</summary>
    public required ExerciseJson? Exercise { get; init; }

    /// <summary>The slot asked for; null where an exercise was.</summary>
    public required string? Slot { get; init; }

    /// <summary>The sessions, oldest first.</summary>
    public required IReadOnlyList<PerformanceJson> Sessions { get; init; }

    /// <summary>The records by exercise and number of reps.</summary>
    public required IReadOnlyList<RecordJson> Records { get; init; }

    /// <summary>That history.</summary>
    public static HistoryJson Of(
        Catalogue catalogue,
        Lifter lifter,
        ExerciseAsked asked,
        IReadOnlyList<Performance> sessions,
        IReadOnlyList<(Exercise Exercise, IReadOnlyList<RepRecord> Records)> records) => new()
        {
            Lifter = lifter.Name.Length > 0 ? lifter.Name : null,
            Exercise = asked.Exercise is { } exercise ? new ExerciseJson(exercise.Id, exercise.Name) : null,
            Slot = asked.Slot,
            Sessions = [.. sessions.Select(s => Session(catalogue, s))],
            Records =
        [
            .. from each in records
               from record in each.Records
               select new RecordJson(ExerciseJson.Of(catalogue, each.Exercise.Id), record.Reps, MassJson.Of(record.Load), DatedDayJson.Iso(record.Date)),
        ],
        };

    private static PerformanceJson Session(Catalogue catalogue, Performance done) => new(
        DatedDayJson.Iso(done.Date),
        PrescriptionJson.Of(catalogue, done.Asked),
        [.. done.Sets.Select(s => new SetJson(s.Set.Target, s.Set.Done, MassJson.Of(s.Set.Load), s.FormSlipped))],
        Outcome.Met(done),
        done.CutShort,
        Estimate(catalogue, done),
        done.Notes);

    private static EstimateJson? Estimate(Catalogue catalogue, Performance done) =>
        catalogue.Find(done.Asked.Exercise) is { } exercise && StrengthEstimate.Of(done, exercise) is { } range
            ? new EstimateJson(
                MassJson.Of(range.Lowest with { Amount = Math.Floor(range.Lowest.Amount) }),
                MassJson.Of(range.Highest with { Amount = Math.Ceiling(range.Highest.Amount) }))
            : null;
}
