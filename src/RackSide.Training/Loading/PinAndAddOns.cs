using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>How a load is set on a machine.</summary>
/// <param name="Pin">The position the pin goes to.</param>
/// <param name="AddOns">The small plates laid on, heaviest first; mostly none.</param>
public sealed record PinAndAddOns(Mass Pin, IReadOnlyList<Mass> AddOns)
{
    /// <summary>The load.</summary>
    public Mass Total => MassSum.Of([Pin, .. AddOns]);

    /// <summary>In words: <c>the pin at 20 kg and 1.25 kg laid on</c>.</summary>
    public string Text => AddOns.Count == 0 ? $"the pin at {Pin}" : $"the pin at {Pin} and {string.Join(" + ", AddOns)} laid on";

    /// <summary>Every way to set a machine; none where the gym has none for the exercise.</summary>
    public static IEnumerable<PinAndAddOns> All(Exercise exercise, GymKit kit) => kit.MachineFor(exercise) is not { } machine
        ? []
        : from pin in machine.Positions from laid in Subsets([.. machine.AddOns.OrderDescending()]) select new PinAndAddOns(pin, laid);

    /// <summary>The way to set exactly this load with the fewest plates laid on; null where there is none.</summary>
    public static PinAndAddOns? For(Mass load, Exercise exercise, GymKit kit) =>
        All(exercise, kit).Where(w => w.Total.CompareTo(load) == 0).MinBy(w => w.AddOns.Count);

    private static IEnumerable<IReadOnlyList<Mass>> Subsets(IReadOnlyList<Mass> plates) => plates.Aggregate(
        (IEnumerable<IReadOnlyList<Mass>>)[[]],
        (sets, plate) => [.. sets, .. sets.Select(set => (IReadOnlyList<Mass>)[.. set, plate])]);
}
