using System.Globalization;
using CsCheck;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Measures;

public class MassTests
{
    // 1 lb = 0.45359237 kg exactly: international yard and pound agreement, 1959; NIST SP 811, appendix B (from memory, exact).
    [Theory]
    [InlineData(1, "0.45359237")]
    [InlineData(45, "20.41165665")]
    [InlineData(135, "61.23496995")]
    [InlineData(225, "102.05828325")]
    public void Pounds_are_exact_kilograms(int pounds, string kilograms) =>
        Mass.Lb(pounds).Kilograms.Should().Be(decimal.Parse(kilograms, CultureInfo.InvariantCulture));

    [Fact]
    public void A_hundred_kilograms_shown_in_pounds() =>
        Mass.Kg(100).In(MassUnit.Pound).Should().BeApproximately(220.462262185m, 1e-9m);

    [Fact]
    public void A_pound_survives_the_way_there_and_back() =>
        Gen.Int[0, 1_000_000].Sample(n =>
        {
            var pounds = n / 1000m;
            Mass.Kg(Mass.Lb(pounds).Kilograms).In(MassUnit.Pound).Should().BeApproximately(pounds, 1e-9m);
        });

    [Fact]
    public void A_45_pound_bar_is_heavier_than_a_20_kilogram_bar()
    {
        (Mass.Lb(45) > Mass.Kg(20)).Should().BeTrue();
        (Mass.Lb(45) <= Mass.Kg(20)).Should().BeFalse();
        Mass.Lb(45).CompareTo(Mass.Kg(20.41165665m)).Should().Be(0);
    }

    [Fact]
    public void Sums_stay_in_their_unit()
    {
        (Mass.Kg(60) + Mass.Kg(2.5m)).Should().Be(Mass.Kg(62.5m));
        (Mass.Lb(135) - Mass.Lb(5)).Should().Be(Mass.Lb(130));
        (Mass.Kg(60) * 0.9m).Should().Be(Mass.Kg(54));
    }

    [Fact]
    public void Kilograms_and_pounds_are_never_summed()
    {
        FluentActions.Invoking(() => Mass.Kg(60) + Mass.Lb(5)).Should().Throw<InvalidOperationException>();
        FluentActions.Invoking(() => Mass.Kg(60) - Mass.Lb(5)).Should().Throw<InvalidOperationException>();
    }

    [Theory]
    [InlineData(67.5, "67.5 kg")]
    [InlineData(60.0, "60 kg")]
    [InlineData(0.125, "0.125 kg")]
    public void It_reads_as_number_and_symbol(double amount, string text) =>
        Mass.Kg((decimal)amount).ToString().Should().Be(text);

    [Theory]
    [InlineData(" KG ", MassUnit.Kilogram)]
    [InlineData("lb", MassUnit.Pound)]
    [InlineData("stone", null)]
    [InlineData(null, null)]
    public void A_symbol_is_read_back(string? symbol, MassUnit? unit) => MassUnits.Parse(symbol).Should().Be(unit);
}
