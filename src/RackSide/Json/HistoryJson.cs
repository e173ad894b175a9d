using RackSide.Commands;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Strength;

namespace RackSide.Json;

/// <summary>A set as done.</summary>
internal sealed record SetJson(int Target, int Done, MassJson? Load, bool FormSlipped);

/// <summary>An exercise on one day.</summary>
internal sealed record PerformanceJson(
    string Date, PrescriptionJson Asked, IReadOnlyList<SetJson> Sets, bool TargetsMet, bool CutShort, EstimateJson? OneRepEstimate);

/// <summary>The span of seven formulas for one repetition; a lower bound, because working sets stop short of the limit.</summary>
internal sealed record EstimateJson(MassJson Lowest, MassJson Highest);

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

    /// <summary>That history.</summary>
    public static HistoryJson Of(Catalogue catalogue, Lifter lifter, ExerciseAsked asked, IReadOnlyList<Performance> sessions) => new()
    {
        Lifter = lifter.Name.Length > 0 ? lifter.Name : null,
        Exercise = asked.Exercise is { } exercise ? new ExerciseJson(exercise.Id, exercise.Name) : null,
        Slot = asked.Slot,
        Sessions = [.. sessions.Select(s => Session(catalogue, s))],
    };

    private static PerformanceJson Session(Catalogue catalogue, Performance done) => new(
        DatedDayJson.Iso(done.Date),
        PrescriptionJson.Of(catalogue, done.Asked),
        [.. done.Sets.Select(s => new SetJson(s.Set.Target, s.Set.Done, MassJson.Of(s.Set.Load), s.FormSlipped))],
        Outcome.Met(done),
        done.CutShort,
        Estimate(catalogue, done));

    private static EstimateJson? Estimate(Catalogue catalogue, Performance done) =>
        catalogue.Find(done.Asked.Exercise) is { } exercise && StrengthEstimate.Of(done, exercise) is { } range
            ? new EstimateJson(MassJson.Of(Tenth(range.Lowest))!, MassJson.Of(Tenth(range.Highest))!)
            : null;

    private static Mass Tenth(Mass mass) => mass with { Amount = Math.Round(mass.Amount, 1) };
}
