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
    public static IReadOnlyList<RepRecord> Of(Exercise exercise, IEnumerable<Performance> done) =>
    [
        .. from performance in done
           from result in performance.Sets
           where result.Set is { Kind: SetKind.Working, Load: not null, Done: >= 1 and <= OneRepMaximum.MostReps } && !result.FormSlipped
           group new RepRecord(result.Set.Done, result.Set.Load!.Value, performance.Date) by result.Set.Done into alike
           orderby alike.Key
           select alike.Aggregate((best, next) => LoadUsed.IsHarder(next.Load, best.Load, exercise) ? next : best),
    ];
}
