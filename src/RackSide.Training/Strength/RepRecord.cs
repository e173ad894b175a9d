using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Progression;

namespace RackSide.Training.Strength;

/// <summary>The hardest load an exercise was done with for a number of reps.</summary>
/// <param name="Reps">How many, 1 to 12.</param>
/// <param name="Load">The load as told; of help, the least.</param>
/// <param name="Date">The day it was first done.</param>
public sealed record RepRecord(int Reps, Mass Load, LocalDate Date)
{
    /// <summary>
    /// The records of an exercise, fewest reps first: one for each number of reps that was ever done, from working sets
    /// with honest form. Where help is told, less of it is the record; where no load is told there are none.
    /// </summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="done">Its performances, oldest first.</param>
    public static IReadOnlyList<RepRecord> Of(Exercise exercise, IEnumerable<Performance> done) => Of(
        exercise,
        from performance in done
        from result in performance.Sets
        where Counts(result)
        select new RepRecord(result.Set.Done, result.Set.Load!.Value, performance.Date));

    /// <summary>The records among loads lifted, fewest reps first: the hardest for each number of reps, the first of its kind.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="lifted">Each load, in the order of their days; it must count.</param>
    public static IReadOnlyList<RepRecord> Of(Exercise exercise, IEnumerable<RepRecord> lifted) =>
    [
        .. from one in lifted
           group one by one.Reps into alike
           orderby alike.Key
           select alike.Aggregate((best, next) => LoadUsed.IsHarder(next.Load, best.Load, exercise) ? next : best),
    ];

    /// <summary>Whether a set can be a record: a working set with honest form, a load and 1 to 12 reps.</summary>
    public static bool Counts(SetResult result) =>
        result.Set is { Kind: SetKind.Working, Load: not null, Done: >= 1 and <= OneRepMaximum.MostReps } && !result.FormSlipped;
}
