using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>
/// What a kit can load, reckoned once and remembered: a page is drawn several times a second and must not search the plates
/// each time. Its answers never change; it belongs to one thread.
/// </summary>
/// <param name="kit">The kit.</param>
public sealed class KitLoads(GymKit kit)
{
    private readonly Lazy<BarTable> table = new(() => new BarTable(kit));
    private readonly Dictionary<LoadType, ReachableLoads?> byType = [];
    private readonly Dictionary<Mass, BarStack?> stacks = [];

    /// <summary>The kit.</summary>
    public GymKit Kit => kit;

    /// <summary>The loads of an exercise; see <see cref="Loads.For"/>.</summary>
    public ReachableLoads? For(Exercise exercise)
    {
        if (!byType.TryGetValue(exercise.LoadType, out var loads))
        {
            byType[exercise.LoadType] = loads = Loads.For(exercise, kit);
        }

        return loads;
    }

    /// <summary>The bar loaded to exactly this mass; see <see cref="BarLoading.StackFor"/>.</summary>
    public BarStack? StackFor(Mass load)
    {
        if (!stacks.TryGetValue(load, out var stack))
        {
            stacks[load] = stack = table.Value.At(load);
        }

        return stack;
    }
}
