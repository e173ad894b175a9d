using System.Globalization;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>
/// Plans worked out by hand. Disc masses are those of the IWF TCRR (3.3) and the IPF rules, seen in second-hand copies;
/// pound plates and the rule "fewest plates, ties to the heavier first" are common practice, no source.
/// </summary>
public class FewestPlatesTests
{
    private static readonly PlateJob OneOfEach = Job(20, (25, 1), (20, 1), (15, 1), (10, 1), (5, 1), (2.5m, 1), (1.25m, 1), (0.5m, 1));

    [Theory]
    [InlineData("20", "")]
    [InlineData("60", "20")]
    [InlineData("62.5", "20 1.25")]
    [InlineData("100", "25 15")]
    [InlineData("147.5", "25 20 15 2.5 1.25")]
    [InlineData("21", "0.5")]
    public void One_set_alone_is_loaded_as_the_trade_loads_it(string load, string side) =>
        Plan(OneOfEach, Number(load)).Should().Be(side);

    [Fact]
    public void Collars_of_five_kilograms_the_pair_count_with_the_bar() =>
        Plan(OneOfEach with { Bar = Mass.Kg(25) }, 100).Should().Be("25 10 2.5");

    [Theory]
    [InlineData(135, "45")]
    [InlineData(185, "45 25")]
    public void Pounds_are_loaded_alike(int load, string side) => Text(FewestPlates.For(new()
    {
        Bar = Mass.Lb(45),
        Plates = SampleKits.Pounds.Plates,
        Sets = [LoadBand.Exactly(Mass.Lb(load))],
    })).Should().Be(side);

    [Fact]
    public void Taking_the_largest_plate_that_fits_would_stall() => Plan(Job(20, (25, 1), (15, 2)), 80).Should().Be("15 15");

    [Fact]
    public void A_set_that_no_plates_make_has_no_plan()
    {
        FewestPlates.For(Sets(OneOfEach, 60, 22)).Should().BeNull();
        FewestPlates.For(Sets(OneOfEach, 15)).Should().BeNull();
        FewestPlates.For(Sets(OneOfEach)).Should().BeNull();
    }

    [Fact]
    public void Two_small_plates_that_stay_are_better_than_one_large_that_must_go()
    {
        // 60 alone is one plate of 20. After 40 and before 40 again, 10 stays on and another comes and goes.
        var job = Sets(Job(20, (20, 1), (10, 2)), 40, 60, 40);

        var plan = FewestPlates.For(job)!;

        Text(plan).Should().Be("10 | 10 10 | 10");
        (plan.Handled, plan.PlatesOn).Should().Be((4, 4));
    }

    [Fact]
    public void The_largest_inside_costs_a_plate_that_any_order_would_spare()
    {
        // 30 is 5 a side and 70 is 25: where 20 may go on outside the 5, the 5 can stay.
        var job = Sets(Job(20, (20, 1), (5, 1)), 30, 70);

        Text(FewestPlates.For(job)).Should().Be("5 | 20 5");
        Text(FewestPlates.For(job with { HeaviestInside = false })).Should().Be("5 | 5 20");
        FewestPlates.For(job)!.Handled.Should().Be(6);
        FewestPlates.For(job with { HeaviestInside = false })!.Handled.Should().Be(4);
    }

    [Fact]
    public void What_is_on_the_bar_already_costs_only_its_taking_off()
    {
        var job = Sets(Job(20, (20, 1), (10, 2)), 60) with { Start = [Mass.Kg(10), Mass.Kg(10)] };

        Text(FewestPlates.For(job)).Should().Be("10 10");
        FewestPlates.For(job)!.Handled.Should().Be(2);
        FewestPlates.For(job with { StrippedAtEnd = false })!.Handled.Should().Be(0);
    }

    [Fact]
    public void A_row_of_squats_and_then_of_rows_may_leave_the_bar_loaded_in_between()
    {
        // Apart 20 is put on and taken off for the squats, and again for the rows; together it stays on.
        var squats = Sets(Job(20, (20, 1), (10, 1)), 60, 80);
        var rows = Sets(squats, 60);

        var together = FewestPlates.For(squats with { Sets = [.. squats.Sets, .. rows.Sets] })!;

        (FewestPlates.For(squats)!.Handled + FewestPlates.For(rows)!.Handled).Should().Be(6);
        together.Handled.Should().Be(4);
        FewestPlates.For(rows with { Start = [Mass.Kg(20), Mass.Kg(10)] })!.Handled.Should().Be(2, "10 and then 20 come off");
    }

    [Fact]
    public void A_start_stack_out_of_order_and_out_of_the_kit_is_taken_as_it_is()
    {
        var job = Sets(Job(20, (10, 1)), 40) with { Start = [Mass.Kg(5), Mass.Kg(10), Mass.Kg(1)] };

        var plan = FewestPlates.For(job)!;

        Text(plan).Should().Be("10");
        plan.Handled.Should().Be(5, "three come off, 10 goes on and comes off");
    }

    [Fact]
    public void Plates_in_pounds_and_kilograms_never_meet_by_rounding()
    {
        // 45 lb is 20.41165665 kg exactly (1959 agreement; NIST SP 811, from memory): the band is a hundredth of a milligram wide.
        var job = Job(20, (20, 1), (10, 1)) with { Plates = [new(Mass.Lb(45), 1), new(Mass.Kg(20), 1), new(Mass.Kg(0.41165664m), 1)] };

        var sum = Mass.Kg(60.8233133m);
        Text(FewestPlates.For(job with { Sets = [LoadBand.Exactly(sum)] })).Should().Be("45");
        Text(FewestPlates.For(job with { Sets = [LoadBand.Exactly(Mass.Kg(sum.Amount - 0.00000002m))] })).Should().Be("20 0.412");
        FewestPlates.For(job with { Sets = [LoadBand.Exactly(Mass.Kg(sum.Amount - 0.00000001m))] }).Should().BeNull();
    }

    [Fact]
    public void No_more_plates_go_on_than_the_sleeve_has_room_for()
    {
        var job = Job(20, (20, 1), (10, 2), (5, 4)) with { Sets = [new(Mass.Kg(70), Mass.Kg(65), Mass.Kg(80))] };

        FewestPlates.For(job with { Room = 1 }).Should().BeNull();
        Text(FewestPlates.For(job with { Room = 2 })).Should().Be("20 5");
    }

    [Fact]
    public void Very_many_kinds_and_pairs_are_still_planned()
    {
        // 26 kinds of 40 pairs: more ways to pick than a number can tell, so fewer of a kind are looked at.
        decimal[] kilograms = [0.25m, 0.5m, 1, 1.25m, 1.5m, 2, 2.5m, 5, 7.5m, 10, 15, 20, 25];
        var job = Sets(Job(20), 20, 55, 70, 85, 100) with
        {
            Plates = [.. kilograms.SelectMany(m => new PlatePairs[] { new(Mass.Kg(m), 40), new(Mass.Lb(m), 40) })],
        };

        var plan = FewestPlates.For(job)!;

        PlanChecks.Hold(job, plan);
        plan.Handled.Should().BeLessThanOrEqualTo(12);
    }

    [Fact]
    public void Plates_of_no_mass_and_no_pairs_are_no_plates() =>
        Text(FewestPlates.For(Sets(Job(20, (0, 3), (10, 0), (5, 2)), 40))).Should().Be("5 5");

    private static PlateJob Job(decimal bar, params (decimal Plate, int Pairs)[] plates) => new()
    {
        Bar = Mass.Kg(bar),
        Plates = [.. plates.Select(p => new PlatePairs(Mass.Kg(p.Plate), p.Pairs))],
        Sets = [],
    };

    private static PlateJob Sets(PlateJob job, params decimal[] loads) => job with { Sets = [.. loads.Select(l => LoadBand.Exactly(Mass.Kg(l)))] };

    private static string Plan(PlateJob job, decimal load) => Text(FewestPlates.For(Sets(job, load)));

    private static string Text(PlatePlan? plan) => string.Join(" | ", plan!.Stacks.Select(s => string.Join(' ', s.Select(p => p.Number))));

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
