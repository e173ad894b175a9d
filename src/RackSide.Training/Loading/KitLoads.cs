using System.Globalization;
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
    private readonly Dictionary<string, IReadOnlyList<BarStack>> rows = [];

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

    /// <summary>
    /// The loaded bars for sets in a row, beginning with what is on the bar now, so that the fewest plates are handled
    /// until the bar is bare; see <see cref="FewestPlates"/>. Only the sets up to a change of bars are told, because then
    /// the bar is stripped and one begins anew.
    /// </summary>
    /// <param name="loads">The loads of the sets to come, in order.</param>
    /// <param name="onBar">What is on the bar now; null for a bare bar.</param>
    /// <returns>The loaded bars, from the first set on; empty where the first load cannot be made.</returns>
    public IReadOnlyList<BarStack> Row(IReadOnlyList<Mass> loads, BarStack? onBar)
    {
        var key = $"{Exactly(loads)} from {onBar?.Bar.Name} {Exactly(onBar?.Side ?? [])}";
        if (!rows.TryGetValue(key, out var row))
        {
            rows[key] = row = Planned(loads, onBar);
        }

        return row;
    }

    /// <summary>All decimals and the unit: what is shown of two masses may be alike.</summary>
    private static string Exactly(IEnumerable<Mass> masses) =>
        string.Join(' ', masses.Select(m => m.Amount.ToString(CultureInfo.InvariantCulture) + m.Symbol));

    private BarStack[] Planned(IReadOnlyList<Mass> loads, BarStack? onBar)
    {
        if (loads.Count == 0 || StackFor(loads[0])?.Bar is not { } bar)
        {
            return [];
        }

        List<LoadBand> sets = [.. loads.TakeWhile(l => StackFor(l)?.Bar == bar).Select(LoadBand.Exactly)];
        return FewestPlates.For(PlateJob.On(bar, kit, sets, onBar)) is { } plan
            ? [.. plan.Stacks.Select(stack => new BarStack(bar, stack))]
            : [];
    }
}
