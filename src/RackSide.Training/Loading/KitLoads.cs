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
    private readonly Dictionary<string, BarTable> tables = [];
    private readonly Dictionary<string, ReachableLoads?> byExercise = [];
    private readonly Dictionary<(string Bars, Mass Load), BarStack?> stacks = [];
    private readonly Dictionary<string, IReadOnlyList<BarStack>> rows = [];

    /// <summary>The kit.</summary>
    public GymKit Kit => kit;

    /// <summary>The loads of an exercise; see <see cref="Loads.For"/>.</summary>
    public ReachableLoads? For(Exercise exercise)
    {
        var key = exercise.LoadType switch
        {
            LoadType.Barbell => BarsOf(exercise),
            LoadType.MachineStack or LoadType.Assisted => exercise.Id,
            var type => type.ToString(),
        };
        if (!byExercise.TryGetValue(key, out var loads))
        {
            byExercise[key] = loads = Loads.From(exercise, kit, TableFor(exercise));
        }

        return loads;
    }

    /// <summary>The bar loaded to exactly this mass; see <see cref="BarLoading.StackFor"/>.</summary>
    public BarStack? StackFor(Mass load, Exercise? exercise = null)
    {
        var key = (BarsOf(exercise), load);
        if (!stacks.TryGetValue(key, out var stack))
        {
            stacks[key] = stack = TableFor(exercise).At(load);
        }

        return stack;
    }

    /// <summary>Whether a load can be made, in words; see <see cref="BarLoading.Explain(Mass, GymKit, Exercise?)"/>.</summary>
    public Loadable Explain(Mass load, Exercise? exercise = null) => BarLoading.Explain(load, kit, TableFor(exercise));

    /// <summary>The loads of an exercise's bars.</summary>
    internal BarTable TableFor(Exercise? exercise)
    {
        var key = BarsOf(exercise);
        if (!tables.TryGetValue(key, out var table))
        {
            tables[key] = table = new BarTable(kit, exercise);
        }

        return table;
    }

    /// <summary>Which bars serve an exercise, as their places in the kit.</summary>
    private string BarsOf(Exercise? exercise) => kit.Bars.Any(b => b.IsKept)
        ? "bars " + string.Join(' ', kit.BarsFor(exercise).Select(b => kit.Bars.ToList().IndexOf(b)))
        : "bars";

    /// <summary>
    /// The loaded bars for sets in a row, beginning with what is on the bar now, so that the fewest plates are handled
    /// until the bar is bare; see <see cref="FewestPlates"/>. Only the sets up to a change of bars are told, because then
    /// the bar is stripped and one begins anew.
    /// </summary>
    /// <param name="loads">The loads of the sets to come, in order.</param>
    /// <param name="onBar">What is on the bar now; null for a bare bar.</param>
    /// <returns>The loaded bars, from the first set on; empty where the first load cannot be made.</returns>
    public IReadOnlyList<BarStack> Row(IReadOnlyList<Mass> loads, BarStack? onBar) => Row([.. loads.Select(l => new BarSet(l, null))], onBar);

    /// <summary>The same for sets of exercises that may have bars of their own.</summary>
    public IReadOnlyList<BarStack> Row(IReadOnlyList<BarSet> loads, BarStack? onBar)
    {
        var key = $"{string.Join(' ', loads.Select(l => $"{Exactly([l.Load])}@{BarsOf(l.Exercise)}"))} from {onBar?.Bar.Name} {Exactly(onBar?.Side ?? [])}";
        if (!rows.TryGetValue(key, out var row))
        {
            rows[key] = row = Planned(loads, onBar);
        }

        return row;
    }

    /// <summary>All decimals and the unit: what is shown of two masses may be alike.</summary>
    private static string Exactly(IEnumerable<Mass> masses) =>
        string.Join(' ', masses.Select(m => m.Amount.ToString(CultureInfo.InvariantCulture) + m.Symbol));

    private BarStack[] Planned(IReadOnlyList<BarSet> loads, BarStack? onBar)
    {
        if (loads.Count == 0 || StackFor(loads[0].Load, loads[0].Exercise)?.Bar is not { } bar)
        {
            return [];
        }

        List<LoadBand> sets = [.. loads.TakeWhile(l => StackFor(l.Load, l.Exercise)?.Bar == bar).Select(l => LoadBand.Exactly(l.Load))];
        return FewestPlates.For(PlateJob.On(bar, kit, sets, onBar)) is { } plan
            ? [.. plan.Stacks.Select(stack => new BarStack(bar, stack))]
            : [];
    }
}
