using RackSide.Training.Exercises;
using RackSide.Training.History;

namespace RackSide.Training.Strength;

/// <summary>What a day's sets say of strength. Working sets stop short of the limit, so it is a lower bound, and told as one.</summary>
public static class StrengthEstimate
{
    /// <summary>
    /// The span from the set that says most; null where the load is not all of what is lifted (the body, a band, help) or
    /// no set has 1 to 12 reps.
    /// </summary>
    public static MaximumRange? Of(Performance done, Exercise exercise) =>
        exercise.LoadType is LoadType.Barbell or LoadType.DumbbellPair or LoadType.DumbbellSingle or LoadType.MachineStack
            ? done.Sets
                .Where(s => s.Set is { Kind: SetKind.Working, Done: > 0, Load.Amount: > 0 } && !s.FormSlipped)
                .Select(s => OneRepMaximum.Range(s.Set.Load!.Value, s.Set.Done))
                .OfType<MaximumRange>()
                .MaxBy(r => r.Lowest)
            : null;
}
