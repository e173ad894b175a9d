using CsCheck;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

public class ReachableLoadsTests
{
    private static readonly ReachableLoads Loads = new([Mass.Kg(30), Mass.Kg(20), Mass.Kg(25), Mass.Kg(25.0m)]);

    [Fact]
    public void They_stand_lightest_first_and_once_each() =>
        Loads.All.Should().Equal(Mass.Kg(20), Mass.Kg(25), Mass.Kg(30));

    [Fact]
    public void The_ends_are_the_lightest_and_the_heaviest() =>
        (Loads.Lightest, Loads.Heaviest).Should().Be((Mass.Kg(20), Mass.Kg(30)));

    [Theory]
    [InlineData(10, 20)]
    [InlineData(22, 20)]
    [InlineData(22.5, 20)]
    [InlineData(22.6, 25)]
    [InlineData(25, 25)]
    [InlineData(99, 30)]
    public void The_nearest_load_is_the_lighter_one_at_a_tie(double target, double nearest) =>
        Loads.Nearest(Mass.Kg((decimal)target)).Should().Be(Mass.Kg((decimal)nearest));

    [Fact]
    public void At_or_below_falls_back_to_the_lightest_and_at_or_above_to_the_heaviest()
    {
        Loads.AtOrBelow(Mass.Kg(24)).Should().Be(Mass.Kg(20));
        Loads.AtOrBelow(Mass.Kg(25)).Should().Be(Mass.Kg(25));
        Loads.AtOrBelow(Mass.Kg(3)).Should().Be(Mass.Kg(20));
        Loads.AtOrAbove(Mass.Kg(24)).Should().Be(Mass.Kg(25));
        Loads.AtOrAbove(Mass.Kg(25)).Should().Be(Mass.Kg(25));
        Loads.AtOrAbove(Mass.Kg(40)).Should().Be(Mass.Kg(30));
    }

    [Fact]
    public void The_next_load_is_strictly_heavier_or_none()
    {
        Loads.Above(Mass.Kg(20)).Should().Be(Mass.Kg(25));
        Loads.Above(Mass.Kg(21)).Should().Be(Mass.Kg(25));
        Loads.Above(Mass.Kg(30)).Should().BeNull();
        Loads.Below(Mass.Kg(30)).Should().Be(Mass.Kg(25));
        Loads.Below(Mass.Kg(21)).Should().Be(Mass.Kg(20));
        Loads.Below(Mass.Kg(20)).Should().BeNull();
    }

    [Fact]
    public void Equal_masses_in_two_units_are_one_load()
    {
        // 45 lb is 20.41165665 kg exactly (1959 agreement; from NIST SP 811).
        var loads = new ReachableLoads([Mass.Lb(45), Mass.Kg(20.41165665m), Mass.Kg(20)]);

        loads.All.Should().Equal(Mass.Kg(20), Mass.Lb(45));
        loads.Has(Mass.Kg(20.41165665m)).Should().BeTrue();
        loads.Has(Mass.Kg(20.412m)).Should().BeFalse();
    }

    [Fact]
    public void No_loads_at_all_are_refused() =>
        FluentActions.Invoking(() => new ReachableLoads([])).Should().Throw<ArgumentException>();

    [Fact]
    public void Every_answer_is_the_one_that_looking_at_each_load_gives() =>
        Gen.Select(Gen.Int[0, 40].Array[1, 12], Gen.Int[-5, 90]).Sample((amounts, half) =>
        {
            var loads = new ReachableLoads(amounts.Select(a => Mass.Kg(a)));
            var target = Mass.Kg(half / 2m);
            var sorted = amounts.Distinct().Order().Select(a => Mass.Kg(a)).ToList();

            loads.Has(target).Should().Be(sorted.Contains(target));
            loads.Above(target).Should().Be(sorted.Cast<Mass?>().FirstOrDefault(l => l > target));
            loads.Below(target).Should().Be(sorted.Cast<Mass?>().LastOrDefault(l => l < target));
            loads.AtOrBelow(target).Should().Be(sorted.Cast<Mass?>().LastOrDefault(l => l <= target) ?? sorted[0]);
            loads.AtOrAbove(target).Should().Be(sorted.Cast<Mass?>().FirstOrDefault(l => l >= target) ?? sorted[^1]);
            loads.Nearest(target).Should().Be(sorted.MinBy(l => Math.Abs(l.Amount - target.Amount)));
        });
}
