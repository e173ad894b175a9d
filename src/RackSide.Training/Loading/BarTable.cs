using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>
/// The loads that bars and plates give, each with its loaded bar. The first bar, the main one, carries every load from its
/// own mass up. A lighter bar is taken only for loads lighter than the empty main bar, because nobody changes bars to come
/// a kilogram closer; a heavier bar is never taken unasked.
/// </summary>
/// <param name="bars">The bars, the main one first.</param>
/// <param name="plates">The plate pairs.</param>
internal sealed class BarTable(IReadOnlyList<Bar> bars, IReadOnlyList<PlatePairs> plates)
{
    private readonly Dictionary<decimal, IReadOnlyDictionary<decimal, IReadOnlyList<Mass>>> bySleeve = [];

    private readonly IReadOnlyList<Bar> lighter =
        [.. bars.Take(1).SelectMany(main => bars.Where(b => b.Mass < main.Mass).OrderByDescending(b => b.Mass))];

    /// <summary>The bars of an exercise, or without one those kept for none.</summary>
    public BarTable(GymKit kit, Exercise? exercise = null)
        : this(kit.BarsFor(exercise), kit.Plates)
    {
    }

    /// <summary>The main bar; null where there is none.</summary>
    public Bar? Main => bars.Count > 0 ? bars[0] : null;

    /// <summary>Every load, in no order; on several lighter bars one load may come twice.</summary>
    public IEnumerable<Mass> Loads => bars.Take(1).SelectMany(main =>
        Totals(main).Concat(lighter.SelectMany(Totals).Where(t => t < main.Mass)));

    /// <summary>
    /// The bar loaded to exactly this mass, or null where it cannot be. Of several lighter bars it is the one that needs
    /// the fewest plates, and of those the heaviest.
    /// </summary>
    public BarStack? At(Mass load) => BarsFor(load)
        .Select(bar => On(bar, load))
        .OfType<BarStack>()
        .MinBy(s => s.Side.Count);

    /// <summary>The bar that a load of about this mass goes on, or null where it is lighter than every bar.</summary>
    public Bar? BarFor(Mass load) => At(load)?.Bar ?? BarsFor(load).FirstOrDefault(b => b.Mass <= load);

    /// <summary>Whether the load could be made if one more pair of these plates were there.</summary>
    public bool CanTake(Mass load, Mass plate) => BarsFor(load)
        .Any(bar => Sides(bar).ContainsKey(((load.Kilograms - bar.Mass.Kilograms) / 2) - plate.Kilograms));

    /// <summary>Whether the plates for it are there and only the sleeve is too short.</summary>
    public bool IsTooLong(Mass load) => BarsFor(load).Any(b => b.Sleeve is not null)
        && new BarTable([.. bars.Select(b => b with { Sleeve = null })], plates).At(load) is not null && At(load) is null;

    private IEnumerable<Bar> BarsFor(Mass load) => bars.Count == 0 ? [] : load >= bars[0].Mass ? [bars[0]] : lighter;

    private BarStack? On(Bar bar, Mass load) =>
        Sides(bar).TryGetValue((load.Kilograms - bar.Mass.Kilograms) / 2, out var side) ? new(bar, side) : null;

    private IEnumerable<Mass> Totals(Bar bar) => Sides(bar).Values.Select(side => new BarStack(bar, side).Total);

    // Bars with as much room have the same stacks; a sleeve that is not told has room for all.
    private IReadOnlyDictionary<decimal, IReadOnlyList<Mass>> Sides(Bar bar) =>
        bySleeve.TryGetValue(bar.Sleeve ?? -1, out var sides)
            ? sides
            : bySleeve[bar.Sleeve ?? -1] = SideStacks.Of(plates, sleeve: bar.Sleeve);
}
