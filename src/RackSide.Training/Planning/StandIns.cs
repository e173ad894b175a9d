using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Plans;

namespace RackSide.Training.Planning;

/// <summary>An exercise that stands in for the one a slot prefers.</summary>
/// <param name="Slot">The slot's key.</param>
/// <param name="Wanted">The exercise that the plan prefers.</param>
/// <param name="Instead">The exercise of the same motion that this gym allows; null where it allows none.</param>
/// <param name="Why">What is in the way, in few words: <c>no rack, no safety bars</c>.</param>
public sealed record StandIn(string Slot, Exercise Wanted, Exercise? Instead, string Why)
{
    /// <summary>In words: <c>goblet squat for back squat (no rack)</c>.</summary>
    public string Text => Instead is null
        ? $"{Slot}: nothing here for {Said(Wanted)} ({Why})"
        : $"{Said(Instead)} for {Said(Wanted)} ({Why})";

    private static string Said(Exercise exercise) => exercise.ShortName.ToLowerInvariant();
}

/// <summary>
/// Tells where a gym does not have what the plan prefers, and what stands in. What a lifter is to avoid is passed over in
/// silence: it is nobody's business beside the rack. On a ladder a rung passed over is no stand-in, nor is what waits for a hold.
/// </summary>
public static class StandIns
{
    /// <summary>Those of a training day, in the order of its slots.</summary>
    public static IReadOnlyList<StandIn> For(TrainingDay day, Catalogue catalogue, GymKit kit, Lifter lifter) =>
        For(day, catalogue, new KitLoads(kit), lifter);

    /// <summary>The same with what the gym can load at hand.</summary>
    internal static IReadOnlyList<StandIn> For(TrainingDay day, Catalogue catalogue, KitLoads gym, Lifter lifter) =>
        [.. day.Slots.Select(slot => Of(slot, catalogue, gym, lifter)).OfType<StandIn>()];

    /// <summary>That of a slot; null where the exercise it prefers is what fills it.</summary>
    private static StandIn? Of(Slot slot, Catalogue catalogue, KitLoads gym, Lifter lifter)
    {
        var wanted = slot.Exercises.Select(catalogue.Find).OfType<Exercise>().FirstOrDefault(e => !(e.Inverted && lifter.AvoidInverted) && e.Needs is null);
        var filled = Fitting.For(slot, catalogue, gym, lifter, TrainingHistory.Empty).FirstOrDefault();
        return wanted is null || wanted.Id == filled?.Id || (slot.Ladder is not null && filled is not null) ? null : new(slot.Key, wanted, filled, Why(wanted, gym.Kit));
    }

    /// <summary>What is in the way of an exercise, in few words.</summary>
    private static string Why(Exercise exercise, GymKit kit)
    {
        var missing = exercise.Equipment.Where(word => !kit.Equipment.Contains(word)).Select(word => $"no {word}").ToList();
        return missing.Count > 0 ? string.Join(", ", missing)
            : NoLoad(exercise.LoadType);
    }

    private static string NoLoad(LoadType type) => type switch
    {
        LoadType.Barbell => "every bar is kept for something else",
        LoadType.DumbbellPair => "no two dumbbells alike",
        LoadType.MachineStack => "its stack has no positions",
        _ => "no load for it",
    };
}
