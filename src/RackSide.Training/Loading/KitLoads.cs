using System.Globalization;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

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
    private readonly Dictionary<string, IReadOnlyList<RampSet>> ramps = [];

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

    /// <summary>Whether there are any; see <see cref="Loads.AnyFor"/>.</summary>
    public bool AnyFor(Exercise exercise) => exercise.LoadType == LoadType.Barbell ? Kit.BarsFor(exercise).Count > 0 : For(exercise) is not null;

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
    /// until the bar is bare; see <see cref="FewestPlates"/>. Only the sets up to a change of bars are told, or to a place
    /// where the bar cannot go with its plates on, because then it is stripped and one begins anew.
    /// </summary>
    /// <param name="loads">The loads of the sets to come, in order.</param>
    /// <param name="onBar">What is on the bar now; null for a bare bar.</param>
    /// <returns>The loaded bars, from the first set on; empty where the first load cannot be made.</returns>
    public IReadOnlyList<BarStack> Row(IReadOnlyList<Mass> loads, BarStack? onBar) => Row([.. loads.Select(l => new BarSet(l, null))], onBar);

    /// <summary>The same for sets of exercises that may have bars of their own.</summary>
    public IReadOnlyList<BarStack> Row(IReadOnlyList<BarSet> loads, BarStack? onBar)
    {
        var key = $"{string.Join(' ', loads.Select(l => $"{Exactly([l.Load])}@{BarsOf(l.Exercise)}{PlaceOf(l)}"))}{From(onBar)}";
        if (!rows.TryGetValue(key, out var row))
        {
            rows[key] = row = Planned(loads, onBar);
        }

        return row;
    }

    /// <summary>The warm-up sets of an exercise; see <see cref="Ramps.For(RampKind, Mass, Exercise, ReachableLoads, GymKit, BarStack?)"/>.</summary>
    /// <exception cref="ArgumentException">The kit has no load for the exercise.</exception>
    public IReadOnlyList<RampSet> RampFor(RampKind kind, Mass work, Exercise exercise, BarStack? onBar)
    {
        var key = $"{kind} {Exactly([work])} {exercise.Id}{From(onBar)}";
        if (!ramps.TryGetValue(key, out var ramp))
        {
            var loads = For(exercise) ?? throw new ArgumentException($"no load for {exercise.Id}", nameof(exercise));
            ramps[key] = ramp = Ramps.For(kind, work, exercise, loads, this, onBar);
        }

        return ramp;
    }

    private static string From(BarStack? onBar) => onBar is null ? "" : $" from {onBar.Bar.Name} {onBar.Place} {Exactly(onBar.Side)}";

    /// <summary>All decimals and the unit: what is shown of two masses may be alike.</summary>
    private static string Exactly(IEnumerable<Mass> masses) =>
        string.Join(' ', masses.Select(m => m.Amount.ToString(CultureInfo.InvariantCulture) + m.Symbol));

    private BarStack[] Planned(IReadOnlyList<BarSet> loads, BarStack? onBar)
    {
        if (loads.Count == 0 || StackFor(loads[0].Load, loads[0].Exercise)?.Bar is not { } bar)
        {
            return [];
        }

        List<BarSet> row = [loads[0]];
        foreach (var set in loads.Skip(1).TakeWhile(l => StackFor(l.Load, l.Exercise)?.Bar == bar))
        {
            if (!BarPlaces.StaysLoaded(new BarStack(bar, []) { Place = PlaceOf(row[^1]) }, PlaceOf(set)))
            {
                break;
            }

            row.Add(set);
        }

        var start = BarPlaces.Arriving(onBar, loads[0].Exercise);
        return FewestPlates.For(PlateJob.On(bar, kit, [.. row.Select(l => LoadBand.Exactly(l.Load))], start)) is { } plan
            ? [.. plan.Stacks.Zip(row, (stack, set) => new BarStack(bar, stack) { Place = PlaceOf(set) })]
            : [];
    }

    private static BarPlace? PlaceOf(BarSet set) => set.Exercise is { } exercise ? BarPlaces.Of(exercise) : null;
}
