using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

public class ExplainTests
{
    private static readonly GymKit Coarse = SampleKits.Kilograms(20, (20, 1), (10, 1), (5, 1), (2.5m, 1));

    [Fact]
    public void A_load_with_plates_names_them_from_the_inside() =>
        BarLoading.Explain(Mass.Kg(65), Coarse).Text.Should().Be("loadable: 65 kg is 20 + 2.5 on each side of the bar");

    [Fact]
    public void Of_two_ways_with_as_few_plates_the_rule_that_chose_is_named()
    {
        var kit = SampleKits.Kilograms(20, (20, 1), (15, 2), (10, 1), (5, 2), (2.5m, 2));

        BarLoading.Explain(Mass.Kg(80), kit).Text
            .Should().Be("loadable: 80 kg is 20 + 10 on each side of the bar, as few plates as 15 + 15 and the larger inside");
    }

    [Fact]
    public void One_way_with_fewer_plates_than_all_others_needs_no_reason() =>
        BarLoading.Explain(Mass.Kg(60), SampleKits.Kilograms(20, (20, 1), (15, 1), (5, 1), (10, 2))).Text
            .Should().Be("loadable: 60 kg is 20 on each side of the bar");

    [Fact]
    public void The_empty_bar_is_said_to_be_that() =>
        BarLoading.Explain(Mass.Kg(20), Coarse).Text.Should().Be("loadable: 20 kg is the bar alone");

    [Fact]
    public void A_light_bar_is_called_by_its_name()
    {
        var kit = Coarse with { Bars = [.. Coarse.Bars, new("the light bar", Mass.Kg(10))] };

        BarLoading.Explain(Mass.Kg(15), kit).Text.Should().Be("loadable: 15 kg is 2.5 on each side of the light bar");
    }

    [Fact]
    public void A_missing_pair_is_named_with_the_loads_on_both_sides()
    {
        var answer = BarLoading.Explain(Mass.Kg(62.5m), Coarse);

        answer.Text.Should().Be("not loadable: 62.5 needs a 1.25 pair; 60 or 65");
        answer.Stack.Should().BeNull();
        (answer.Below, answer.Above).Should().Be((Mass.Kg(60), Mass.Kg(65)));
    }

    [Fact]
    public void Twenty_two_with_one_pair_of_halves_falls_back_to_21()
    {
        // Trade check: with one 0.5 pair and no 1s, 22 is not loadable and the next below is 21; hand-worked.
        var answer = BarLoading.Explain(Mass.Kg(22), SampleKits.OneOfEach);

        answer.Below.Should().Be(Mass.Kg(21));
        answer.Text.Should().Be("not loadable: 22 needs another 0.5 pair; 21 or 22.5");
    }

    [Fact]
    public void A_load_that_no_one_pair_would_mend_says_so() =>
        BarLoading.Explain(Mass.Kg(61.3m), Coarse).Text.Should().Be("not loadable: 61.3 needs plates that are not here; 60 or 65");

    [Fact]
    public void Less_than_the_empty_bar_says_so() =>
        BarLoading.Explain(Mass.Kg(15), Coarse).Text.Should().Be("not loadable: 15 is lighter than the empty bar; 20 is the least");

    [Fact]
    public void More_than_all_plates_says_what_is_the_most() =>
        BarLoading.Explain(Mass.Kg(400), Coarse).Text.Should().Be("not loadable: 400 needs plates that are not here; 95 is the most");

    [Fact]
    public void A_bar_without_plates_has_nothing_else_to_offer_than_itself() =>
        BarLoading.Explain(Mass.Kg(21), SampleKits.Kilograms(20)).Text
            .Should().Be("not loadable: 21 needs a 0.5 pair; 20 is the most");

    [Fact]
    public void Pounds_asked_of_a_kilogram_gym_carry_their_units() =>
        BarLoading.Explain(Mass.Lb(135), Coarse).Text
            .Should().Be("not loadable: 135 lb needs plates that are not here; 60 kg or 65 kg");

    [Fact]
    public void Plates_of_both_units_carry_their_units()
    {
        var kit = SampleKits.Kilograms(20) with { Plates = [new(Mass.Lb(45), 1)] };

        BarLoading.Explain(Mass.Kg(60.8233133m), kit).Text
            .Should().Be("loadable: 60.823 kg is 45 lb on each side of the bar");
    }
}
