using CsCheck;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Tests.Loading;

/// <summary>The ramp is common practice, no source; its check values were worked out by hand on a 20 kg bar in 2.5 kg steps.</summary>
public class RampStepsTests
{
    [Theory]
    [InlineData(100, "20x10 50x5 70x3 85x2")]
    [InlineData(60, "20x10 30x5 40x3 50x2")]
    [InlineData(30, "20x10")]
    [InlineData(32.5, "20x10 22.5x3 27.5x2")]
    [InlineData(22.5, "20x10")]
    public void A_full_ramp_climbs_from_the_empty_bar(double work, string ramp) =>
        Text(RampKind.Full, (decimal)work).Should().Be(ramp);

    [Theory]
    [InlineData(100, "50x5 75x3")]
    [InlineData(60, "30x5 45x3")]
    [InlineData(30, "22.5x3")]
    [InlineData(25, "20x5")]
    public void A_short_ramp_has_two_steps_at_most(double work, string ramp) =>
        Text(RampKind.Short, (decimal)work).Should().Be(ramp);

    [Theory]
    [InlineData(RampKind.Full)]
    [InlineData(RampKind.Short)]
    public void There_is_nothing_to_ramp_to_the_empty_bar(RampKind kind) => Text(kind, 20).Should().BeEmpty();

    [Fact]
    public void A_slot_without_a_ramp_has_none() => Text(RampKind.None, 100).Should().BeEmpty();

    [Fact]
    public void A_coarse_gym_does_not_ask_for_the_same_load_twice() =>
        Text(RampKind.Full, 60, kit: SampleKits.Kilograms(20, (10, 2))).Should().Be("20x10 40x3");

    [Fact]
    public void A_pound_ramp_climbs_in_pounds()
    {
        // Of one pair each: 67.5 -> 45 + 2x10; 94.5 -> 45 + 2x(10+5+2.5), as 95 is over; 114.75 -> 45 + 2x(25+5+2.5). Hand-worked.
        Text(RampKind.Full, 135, MassUnit.Pound, SampleKits.Pounds).Should().Be("45x10 65x5 80x3 110x2");
    }

    [Fact]
    public void A_working_load_on_the_light_bar_is_ramped_on_the_light_bar()
    {
        var kit = SampleKits.StepsOfTwoAndAHalf with { Bars = [new("the bar", Mass.Kg(20)), new("light", Mass.Kg(8))] };

        Text(RampKind.Full, 18, kit: kit).Should().Be("8x10 10.5x3 13x2");
    }

    [Fact]
    public void A_working_load_on_the_main_bar_does_not_send_for_the_light_one()
    {
        var kit = SampleKits.StepsOfTwoAndAHalf with { Bars = [new("the bar", Mass.Kg(20)), new("light", Mass.Kg(8))] };

        Text(RampKind.Short, 25, kit: kit).Should().Be("20x5");
    }

    [Fact]
    public void A_ramp_does_not_change_over_to_a_third_bar_that_would_come_closer()
    {
        // 18 is 8 + 2x5; 85 % is 15.3, and 15 is the empty bar of 15, but 14 is 8 + 2x(2.5+0.5). Hand-worked.
        var kit = SampleKits.Kilograms(20, (5, 1), (2.5m, 1), (0.5m, 1)) with
        {
            Bars = [new("the bar", Mass.Kg(20)), new("fifteen", Mass.Kg(15)), new("eight", Mass.Kg(8))],
        };

        Text(RampKind.Full, 18, kit: kit).Should().Be("8x10 9x5 14x2");
    }

    [Theory]
    [InlineData(20, "10x5 14x3 16x2")]
    [InlineData(8, "4x5 6x2")]
    [InlineData(4, "")]
    public void Dumbbells_climb_without_a_bar(int work, string ramp)
    {
        var kit = SampleKits.OneOfEach with { Dumbbells = [.. Enumerable.Range(2, 9).Select(n => Mass.Kg(2 * n))] };

        Text(RampKind.Full, work, kit: kit, type: LoadType.DumbbellPair).Should().Be(ramp);
    }

    [Theory]
    [InlineData(LoadType.AddedWeight)]
    [InlineData(LoadType.Assisted)]
    public void Hung_weight_and_help_are_not_ramped(LoadType type) => Text(RampKind.Full, 20, type: type).Should().BeEmpty();

    [Fact]
    public void A_ramp_ascends_below_the_working_load_by_loads_the_gym_has() =>
        Gen.Select(SampleKits.Small, Gen.Int[0, 1000], Gen.OneOf(RampKind.Full, RampKind.Short)).Sample(
            (kit, pick, kind) =>
            {
                var squat = SampleKits.Loaded(LoadType.Barbell);
                var loads = Loads.For(squat, kit)!;
                var work = loads.All[pick % loads.All.Count];
                var ramp = RampSteps.For(kind, work, squat, loads, kit);

                ramp.Select(r => r.Load.Kilograms).Should().BeInAscendingOrder().And.OnlyHaveUniqueItems();
                ramp.Select(r => r.Reps).Should().BeInDescendingOrder();
                ramp.All(r => r.Load < work && loads.Has(r.Load)).Should().BeTrue();
                (ramp.Count > 0).Should().Be(work > kit.MainBar.Mass);
            },
            iter: 300);

    private static string Text(
        RampKind kind, decimal work, MassUnit unit = MassUnit.Kilogram, GymKit? kit = null, LoadType type = LoadType.Barbell)
    {
        var gym = kit ?? SampleKits.StepsOfTwoAndAHalf;
        var exercise = SampleKits.Loaded(type);
        var ramp = RampSteps.For(kind, new(work, unit), exercise, Loads.For(exercise, gym)!, gym);
        return string.Join(' ', ramp.Select(r => $"{r.Load.Number}x{r.Reps}"));
    }
}
