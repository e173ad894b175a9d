using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>
/// The loads that a kit's bars and plates give, each with its loaded bar. The main bar carries every load from its own
/// mass up. A lighter bar is taken only for loads lighter than the empty main bar, because nobody changes bars to come a
/// kilogram closer; a heavier bar is never taken unasked.
/// </summary>
internal sealed class BarTable(GymKit kit)
{
    private readonly IReadOnlyDictionary<decimal, IReadOnlyList<Mass>> sides = SideStacks.Of(kit);

    private readonly IReadOnlyList<Bar> lighter = [.. kit.Bars.Where(b => b.Mass < kit.MainBar.Mass).OrderByDescending(b => b.Mass)];

    /// <summary>Every load, in no order; on several lighter bars one load may come twice.</summary>
    public IEnumerable<Mass> Loads => Totals(kit.MainBar)
        .Concat(lighter.SelectMany(Totals).Where(t => t < kit.MainBar.Mass));

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
        .Any(bar => sides.ContainsKey(((load.Kilograms - bar.Mass.Kilograms) / 2) - plate.Kilograms));

    private IEnumerable<Bar> BarsFor(Mass load) => load >= kit.MainBar.Mass ? [kit.MainBar] : lighter;

    private BarStack? On(Bar bar, Mass load) =>
        sides.TryGetValue((load.Kilograms - bar.Mass.Kilograms) / 2, out var side) ? new(bar, side) : null;

    private IEnumerable<Mass> Totals(Bar bar) => sides.Values.Select(side => new BarStack(bar, side).Total);
}
