using CsCheck;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>Against every way there is to fill a sleeve, written out one by one, on random small gyms.</summary>
public class ExhaustiveTests
{
    [Fact]
    public void The_loads_are_exactly_those_that_trying_every_way_finds() =>
        SampleKits.Small.Sample(kit =>
            Loads.For(SampleKits.Loaded(LoadType.Barbell), kit)!.All.Select(l => l.Kilograms)
                .Should().Equal(EverySide(kit).Select(side => Total(kit, side)).Distinct().Order()), iter: 300);

    [Fact]
    public void Each_stack_is_the_best_that_trying_every_way_finds() =>
        SampleKits.Small.Sample(
            kit =>
            {
                foreach (var ways in EverySide(kit).GroupBy(side => Total(kit, side)))
                {
                    var best = ways.OrderBy(side => side.Count).ThenByDescending(AsText, StringComparer.Ordinal).First();
                    var found = BarLoading.StackFor(Mass.Kg(ways.Key), kit)!.Side;
                    found.Select(p => p.Kilograms).Should().Equal(best.Select(p => p.Kilograms));
                }
            },
            iter: 20);

    [Fact]
    public void A_stack_weighs_its_load_and_uses_no_plate_the_gym_lacks() =>
        SampleKits.Small.Sample(
            kit =>
            {
                foreach (var load in Loads.For(SampleKits.Loaded(LoadType.Barbell), kit)!.All)
                {
                    var stack = BarLoading.StackFor(load, kit)!;
                    stack.Total.Kilograms.Should().Be(load.Kilograms);
                    stack.Side.Should().BeInDescendingOrder();
                    kit.Plates.All(owned => stack.Side.Count(p => p == owned.Mass) <= owned.Pairs).Should().BeTrue();
                    stack.Side.Should().BeSubsetOf(kit.Plates.Select(p => p.Mass));
                }
            },
            iter: 20);

    [Fact]
    public void A_load_between_two_neighbours_has_no_stack() =>
        SampleKits.Small.Sample(
            kit =>
            {
                var loads = Loads.For(SampleKits.Loaded(LoadType.Barbell), kit)!.All;
                foreach (var (lighter, heavier) in loads.Zip(loads.Skip(1)))
                {
                    BarLoading.StackFor(Mass.Kg((lighter.Kilograms + heavier.Kilograms) / 2), kit).Should().BeNull();
                }
            },
            iter: 20);

    [Fact]
    public void Ten_pairs_of_twelve_masses_are_still_reckoned()
    {
        // Trying 11^12 ways one by one would not end. Every quarter of a kilogram up to the sum of all plates is there.
        decimal[] masses = [0.25m, 0.5m, 1, 1.25m, 1.5m, 2, 2.5m, 5, 10, 15, 20, 25];
        var kit = SampleKits.Kilograms(20, [.. masses.Select(m => (m, 10))]);

        var loads = Loads.For(SampleKits.Loaded(LoadType.Barbell), kit)!;

        loads.Heaviest.Should().Be(Mass.Kg(20 + (20 * masses.Sum())));
        loads.All.Should().HaveCount((int)(20 * masses.Sum() / 0.5m) + 1);
    }

    private static IEnumerable<IReadOnlyList<Mass>> EverySide(GymKit kit) => kit.Plates
        .OrderByDescending(p => p.Mass)
        .Aggregate(
            (IEnumerable<IReadOnlyList<Mass>>)[[]],
            (sides, plates) =>
                from side in sides
                from count in Enumerable.Range(0, plates.Pairs + 1)
                select (IReadOnlyList<Mass>)[.. side, .. Enumerable.Repeat(plates.Mass, count)])
        .ToList();

    private static decimal Total(GymKit kit, IReadOnlyList<Mass> side) =>
        kit.MainBar.Mass.Kilograms + (2 * side.Sum(p => p.Kilograms));

    private static string AsText(IReadOnlyList<Mass> side) =>
        string.Join('|', side.Select(p => ((long)(p.Kilograms * 100_000_000_000m)).ToString("D16", null)));
}
