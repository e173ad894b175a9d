using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>
/// What adjustable dumbbells can weigh. A pair of plates is one for each end of one handle, so two handles share the pairs
/// and must be alike; the load told is that of one.
/// </summary>
public static class HandleLoading
{
    /// <summary>Every load of the gym's handles for an exercise; empty where it needs two and there is one.</summary>
    public static IEnumerable<Mass> Loads(LoadType type, GymKit kit) => Fit(type, kit)
        .SelectMany(h => Sides(h, type, kit).Values.Select(side => new BarStack(h.Bar, side).Total));

    /// <summary>
    /// The handle with its plates for exactly this load, with the fewest plates; null where a fixed dumbbell has it, which
    /// needs no plates, or no handle can make it.
    /// </summary>
    public static BarStack? StackFor(Mass load, LoadType type, GymKit kit) => kit.Dumbbells.Any(d => d.CompareTo(load) == 0)
        ? null
        : Fit(type, kit).Select(h => On(h, load, type, kit)).OfType<BarStack>().MinBy(s => s.Side.Count);

    private static BarStack? On(Handle handle, Mass load, LoadType type, GymKit kit) =>
        Sides(handle, type, kit).TryGetValue((load.Kilograms - handle.Bar.Mass.Kilograms) / 2, out var side) ? new(handle.Bar, side) : null;

    private static IEnumerable<Handle> Fit(LoadType type, GymKit kit) => type switch
    {
        LoadType.DumbbellPair => kit.Handles.Where(h => h.Count >= 2),
        LoadType.DumbbellSingle => kit.Handles,
        _ => [],
    };

    private static IReadOnlyDictionary<decimal, IReadOnlyList<Mass>> Sides(Handle handle, LoadType type, GymKit kit)
    {
        var hands = type == LoadType.DumbbellPair ? 2 : 1;
        return SideStacks.Of((handle.Plates ?? kit.Plates).Select(p => p with { Pairs = p.Pairs / hands }), sleeve: handle.Bar.Sleeve);
    }
}
