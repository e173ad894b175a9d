using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Progression;

/// <summary>What to do of an exercise next time, and why.</summary>
/// <param name="Load">The load, always one the kit can give; null where the exercise has none.</param>
/// <param name="Targets">
/// Reps, or seconds of a hold, for each set; one number, the total, for a total; empty for a tick, which has neither.
/// </param>
/// <param name="Why">Which rule spoke, with its sentence.</param>
public sealed record Decision(Mass? Load, IReadOnlyList<int> Targets, Reason Why)
{
    /// <summary>The search that finds the load in the session, beginning at <see cref="Load"/>; null where it is known.</summary>
    public SearchSpan? Search { get; init; }
}
