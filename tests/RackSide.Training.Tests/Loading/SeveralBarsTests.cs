using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>Bars kept for some exercises, collars that count, plates of both units. Hand-worked; 1 lb is 0.45359237 kg.</summary>
public class SeveralBarsTests
{
    private static readonly Exercise Squat = SampleKits.Loaded(LoadType.Barbell);
    private static readonly Exercise Curl = SampleKits.Loaded(LoadType.Barbell, Motion.ElbowFlexion) with { Id = "bb-curl" };
    private static readonly Bar CurlBar = new("the curl bar", Mass.Kg(8)) { Motions = [Motion.ElbowFlexion] };
    private static readonly GymKit Gym = SampleKits.Kilograms(20, (5, 1), (2.5m, 1)) with { Bars = [new("the bar", Mass.Kg(20)), CurlBar] };

    [Fact]
    public void A_bar_kept_for_a_motion_serves_that_motion_and_no_other()
    {
        Amounts(Curl, Gym).Should().Equal(8, 13, 18, 23);
        Amounts(Squat, Gym).Should().Equal(20, 25, 30, 35);
    }

    [Fact]
    public void A_bar_can_be_kept_for_one_exercise_alone() =>
        Amounts(Squat, Gym with { Bars = [Gym.Bars[0], new("the other bar", Mass.Kg(10)) { Exercises = [Squat.Id] }] }).Should().Equal(10, 15, 20, 25);

    [Fact]
    public void An_exercise_for_which_no_bar_is_left_has_no_load()
    {
        Loads.For(Squat, Gym with { Bars = [CurlBar] }).Should().BeNull();
        Loads.AnyFor(Squat, Gym with { Bars = [CurlBar] }).Should().BeFalse();
    }

    [Fact]
    public void A_row_of_sets_ends_where_the_next_set_has_another_bar()
    {
        var row = new KitLoads(Gym).Row([new BarSet(Mass.Kg(30), Squat), new BarSet(Mass.Kg(18), Curl)], null);

        row.Should().ContainSingle().Which.Bar.Name.Should().Be("the bar");
    }

    [Fact]
    public void The_same_number_on_another_bar_is_another_stack()
    {
        var loads = new KitLoads(Gym with { Bars = [Gym.Bars[0], CurlBar with { Mass = Mass.Kg(10) }] });

        loads.StackFor(Mass.Kg(25), Squat)!.Side.Should().Equal(Mass.Kg(2.5m));
        loads.StackFor(Mass.Kg(25), Curl)!.Side.Should().Equal(Mass.Kg(5), Mass.Kg(2.5m));
    }

    [Fact]
    public void Two_collars_of_2_5_count()
    {
        // Trade check: 100 with 2.5 kg collars is 25 + 10 + 2.5 a side (IWF TCRR 3.3: collars 2.5 kg each).
        var kit = SampleKits.OneOfEach with { Bars = [Bar.Collared("the bar", Mass.Kg(20), Mass.Kg(2.5m))] };

        BarLoading.StackFor(Mass.Kg(100), kit)!.Side.Should().Equal(Mass.Kg(25), Mass.Kg(10), Mass.Kg(2.5m));
        BarLoading.Explain(Mass.Kg(25), kit).Text.Should().Be("loadable: 25 kg is the bar alone, with its collars");
    }

    [Fact]
    public void Pound_plates_on_a_kilogram_bar_are_told_to_the_gram()
    {
        // 20 + 2 x 45 x 0.45359237 = 60.8233133 kg.
        var kit = SampleKits.Kilograms(20) with { Plates = [new(Mass.Lb(45), 1)] };
        var load = Loads.For(Squat, kit)!.Heaviest;

        load.Should().Be(Mass.Kg(60.8233133m));
        load.ToString().Should().Be("60.823 kg");
    }

    [Fact]
    public void A_kilogram_pair_and_a_pound_pair_add_up_exactly()
    {
        // 20 + 2 x (20 + 10 x 0.45359237) = 69.0718474 kg.
        var kit = SampleKits.Kilograms(20, (20, 1)) with { Plates = [new(Mass.Kg(20), 1), new(Mass.Lb(10), 1)] };

        BarLoading.StackFor(Mass.Kg(69.0718474m), kit)!.Side.Should().Equal(Mass.Kg(20), Mass.Lb(10));
        BarLoading.Explain(Mass.Kg(69.0718474m), kit).Text.Should().Be("loadable: 69.072 kg is 20 kg + 10 lb on each side of the bar");
    }

    [Fact]
    public void A_pound_bar_with_pound_plates_stays_in_pounds_in_a_kilogram_gym()
    {
        var kit = SampleKits.Kilograms(20) with { Bars = [new("the bar", Mass.Lb(45))], Plates = [new(Mass.Lb(45), 1)] };

        Loads.For(Squat, kit)!.All.Should().Equal(Mass.Lb(45), Mass.Lb(135));
    }

    [Fact]
    public void Forty_five_pounds_and_twenty_kilograms_are_never_taken_for_each_other()
    {
        // 45 lb = 20.41165665 kg.
        var kit = SampleKits.Kilograms(20) with { Plates = [new(Mass.Lb(45), 1), new(Mass.Kg(20), 1)] };

        Loads.For(Squat, kit)!.All.Select(l => l.Kilograms).Should().Equal(20, 60, 60.8233133m, 100.8233133m);
    }

    private static IEnumerable<decimal> Amounts(Exercise exercise, GymKit kit) => Loads.For(exercise, kit)!.All.Select(l => l.Amount);
}
