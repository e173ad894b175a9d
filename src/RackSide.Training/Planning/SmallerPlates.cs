using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Progression;

namespace RackSide.Training.Planning;

/// <summary>
/// Which plates would make a step of ten per cent or less where the kit can only make a larger one (ACSM 2009: 2 to 10 per
/// cent). It names the heaviest pair that is commonly sold and still small enough.
/// </summary>
internal static class SmallerPlates
{
    private const decimal MostPercent = 10;

    /// <summary>The advice for a decision, or null where the step is small enough, or no bar is loaded.</summary>
    public static string? For(Decision decision, Exercise exercise, GymKit kit) =>
        exercise.LoadType == LoadType.Barbell && IsBig(decision.Why) && From(decision.Why) is { } from
        && MissingPair.HeaviestUpTo(from * (MostPercent / 200), kit.Unit) is { } plate
            ? $"a pair of {plate} plates would make smaller steps"
            : null;

    private static bool IsBig(Reason why) => why.Inputs.Any(i => i.Name == "stepPercent" && i.Amount > MostPercent);

    private static decimal? From(Reason why) => why.Inputs.FirstOrDefault(i => i.Name == "from")?.Amount;
}
