using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

public class LoadsTests
{
    private static readonly GymKit Kit = SampleKits.Kilograms(20, (5, 1), (2.5m, 1)) with
    {
        Dumbbells = [Mass.Kg(4), Mass.Kg(6), Mass.Kg(8)],
        Stack = [Mass.Kg(5), Mass.Kg(10), Mass.Kg(20)],
    };

    [Fact]
    public void A_barbell_begins_at_the_empty_bar() =>
        Amounts(LoadType.Barbell, Kit).Should().Equal(20, 25, 30, 35);

    [Fact]
    public void A_lighter_bar_adds_the_loads_below_the_empty_main_bar() =>
        Amounts(LoadType.Barbell, Kit with { Bars = [.. Kit.Bars, new("light", Mass.Kg(8))] })
            .Should().Equal(8, 13, 18, 20, 25, 30, 35);

    [Theory]
    [InlineData(LoadType.DumbbellPair)]
    [InlineData(LoadType.DumbbellSingle)]
    public void Dumbbells_are_those_on_the_rack(LoadType type) => Amounts(type, Kit).Should().Equal(4, 6, 8);

    [Fact]
    public void A_machine_has_the_positions_of_its_stack() =>
        Amounts(LoadType.MachineStack, Kit).Should().Equal(5, 10, 20);

    [Fact]
    public void Plates_hang_from_the_belt_one_by_one_and_a_dumbbell_alone() =>
        Amounts(LoadType.AddedWeight, Kit).Should().Equal(0, 2.5m, 4, 5, 6, 7.5m, 8, 10, 12.5m, 15);

    [Fact]
    public void No_more_than_a_hundred_kilograms_hangs() =>
        Amounts(LoadType.AddedWeight, SampleKits.Kilograms(20, (25, 2), (20, 1)))
            .Should().Equal(0, 20, 25, 40, 45, 50, 65, 70, 75, 90, 95, 100);

    [Fact]
    public void Nothing_hung_is_a_load_too() =>
        Amounts(LoadType.AddedWeight, SampleKits.Kilograms(20)).Should().Equal(0);

    [Fact]
    public void Help_goes_from_none_to_60_kilograms_by_fives()
    {
        // Common practice, no source.
        var loads = Amounts(LoadType.Assisted, Kit);

        loads.Should().HaveCount(13).And.StartWith([0m, 5m]).And.EndWith([55m, 60m]);
    }

    [Fact]
    public void Help_goes_from_none_to_130_pounds_by_tens()
    {
        // Common practice, no source.
        var loads = Loads.For(SampleKits.Loaded(LoadType.Assisted), SampleKits.Pounds)!;

        loads.All.Should().HaveCount(14);
        (loads.Lightest, loads.Heaviest).Should().Be((Mass.Lb(0), Mass.Lb(130)));
    }

    [Theory]
    [InlineData(LoadType.Bodyweight)]
    [InlineData(LoadType.Band)]
    public void The_body_and_a_band_have_no_told_load(LoadType type) =>
        Loads.For(SampleKits.Loaded(type), Kit).Should().BeNull();

    [Theory]
    [InlineData(LoadType.DumbbellPair)]
    [InlineData(LoadType.DumbbellSingle)]
    [InlineData(LoadType.MachineStack)]
    public void A_gym_without_the_thing_gives_no_load(LoadType type) =>
        Loads.For(SampleKits.Loaded(type), SampleKits.OneOfEach).Should().BeNull();

    [Fact]
    public void A_pair_that_is_listed_but_not_owned_adds_nothing() =>
        Amounts(LoadType.Barbell, SampleKits.Kilograms(20, (10, 0), (5, 1))).Should().Equal(20, 30);

    private static IEnumerable<decimal> Amounts(LoadType type, GymKit kit) =>
        Loads.For(SampleKits.Loaded(type), kit)!.All.Select(l => l.Amount);
}
