using System.Globalization;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>
/// Hand-worked stacks. Disc masses are those of the IWF TCRR (3.3) and the IPF rules, seen in second-hand copies; pound
/// plates are common practice, no source. The stacks follow from the rule "fewest plates, ties to the heavier first".
/// </summary>
public class BarLoadingTests
{
    [Theory]
    [InlineData("20", "")]
    [InlineData("60", "20")]
    [InlineData("62.5", "20 1.25")]
    [InlineData("100", "25 15")]
    [InlineData("147.5", "25 20 15 2.5 1.25")]
    [InlineData("21", "0.5")]
    public void A_kilogram_load_goes_on_with_the_fewest_plates(string load, string side) =>
        Side(BarLoading.StackFor(Mass.Kg(Number(load)), SampleKits.OneOfEach)).Should().Be(side);

    [Fact]
    public void Competition_collars_of_five_kilograms_the_pair_count_with_the_bar()
    {
        var kit = SampleKits.OneOfEach with { Bars = [new("bar and collars", Mass.Kg(25))] };

        Side(BarLoading.StackFor(Mass.Kg(100), kit)).Should().Be("25 10 2.5");
    }

    [Theory]
    [InlineData(45, "")]
    [InlineData(135, "45")]
    [InlineData(185, "45 25")]
    [InlineData(225, "45 35 10")]
    public void A_pound_load_goes_on_a_pound_bar(int load, string side) =>
        Side(BarLoading.StackFor(Mass.Lb(load), SampleKits.Pounds)).Should().Be(side);

    [Fact]
    public void Taking_the_largest_plate_that_fits_would_miss_80_on_a_small_set()
    {
        // A 25 leaves 5 that nothing fills; hand-worked.
        var kit = SampleKits.Kilograms(20, (25, 1), (15, 2));

        Side(BarLoading.StackFor(Mass.Kg(80), kit)).Should().Be("15 15");
    }

    [Fact]
    public void Taking_the_largest_plate_that_fits_would_take_more_plates_than_needed()
    {
        // 30 a side: 25 + 2.5 + 2.5 is three plates; hand-worked.
        var kit = SampleKits.Kilograms(20, (25, 1), (15, 2), (2.5m, 2));

        Side(BarLoading.StackFor(Mass.Kg(80), kit)).Should().Be("15 15");
    }

    [Fact]
    public void Of_equally_few_plates_the_larger_go_inside()
    {
        var kit = SampleKits.Kilograms(20, (15, 2), (20, 1), (10, 1));

        Side(BarLoading.StackFor(Mass.Kg(80), kit)).Should().Be("20 10");
    }

    [Fact]
    public void A_load_that_no_plates_make_has_no_stack()
    {
        BarLoading.StackFor(Mass.Kg(22), SampleKits.OneOfEach).Should().BeNull();
        BarLoading.StackFor(Mass.Kg(15), SampleKits.OneOfEach).Should().BeNull();
        BarLoading.StackFor(Mass.Kg(500), SampleKits.OneOfEach).Should().BeNull();
    }

    [Fact]
    public void The_same_number_of_pounds_is_not_the_same_load() =>
        BarLoading.StackFor(Mass.Lb(60), SampleKits.OneOfEach).Should().BeNull();

    [Fact]
    public void Pound_plates_on_a_kilogram_bar_add_up_exactly()
    {
        // 20 kg and two plates of 45 lb, each 20.41165665 kg (1 lb = 0.45359237 kg, 1959 agreement; from NIST SP 811).
        var kit = SampleKits.Kilograms(20) with { Plates = [new(Mass.Lb(45), 1)] };

        var stack = BarLoading.StackFor(Mass.Kg(60.8233133m), kit);

        stack!.Total.Should().Be(Mass.Kg(60.8233133m));
    }

    [Fact]
    public void A_lighter_bar_is_taken_only_below_the_empty_main_bar()
    {
        var kit = SampleKits.OneOfEach with { Bars = [new("the bar", Mass.Kg(20)), new("the light bar", Mass.Kg(10))] };

        BarLoading.StackFor(Mass.Kg(15), kit).Should().BeEquivalentTo(new BarStack(kit.Bars[1], [Mass.Kg(2.5m)]));
        BarLoading.StackFor(Mass.Kg(20), kit).Should().BeEquivalentTo(new BarStack(kit.Bars[0], []));
        BarLoading.StackFor(Mass.Kg(61), kit)!.Bar.Should().Be(kit.Bars[0], "nobody changes bars for a kilogram");
    }

    [Fact]
    public void Of_two_lighter_bars_the_one_with_fewer_plates_is_taken()
    {
        var kit = SampleKits.OneOfEach with
        {
            Bars = [new("the bar", Mass.Kg(20)), new("ten", Mass.Kg(10)), new("fifteen", Mass.Kg(15))],
        };

        BarLoading.StackFor(Mass.Kg(15), kit)!.Bar.Name.Should().Be("fifteen");
        BarLoading.StackFor(Mass.Kg(11), kit)!.Bar.Name.Should().Be("ten");
    }

    [Fact]
    public void A_much_lighter_bar_with_one_plate_goes_before_a_bar_with_two()
    {
        var kit = SampleKits.OneOfEach with
        {
            Bars = [new("the bar", Mass.Kg(20)), new("twelve", Mass.Kg(12)), new("eight", Mass.Kg(8))],
        };

        BarLoading.StackFor(Mass.Kg(18), kit).Should().BeEquivalentTo(new BarStack(kit.Bars[2], [Mass.Kg(5)]));
    }

    [Fact]
    public void A_heavier_bar_is_never_taken_unasked()
    {
        var kit = SampleKits.Kilograms(20) with { Bars = [new("the bar", Mass.Kg(20)), new("heavy", Mass.Kg(25))] };

        BarLoading.StackFor(Mass.Kg(25), kit).Should().BeNull();
    }

    private static string Side(BarStack? stack) => string.Join(' ', stack!.Side.Select(p => p.Number));

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
