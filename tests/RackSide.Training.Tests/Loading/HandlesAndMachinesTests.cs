using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>Adjustable dumbbells, machines with plates laid on, the belt. Hand-worked.</summary>
public class HandlesAndMachinesTests
{
    private static readonly Exercise Pair = SampleKits.Loaded(LoadType.DumbbellPair);
    private static readonly Exercise Single = SampleKits.Loaded(LoadType.DumbbellSingle);
    private static readonly GymKit Handles = SampleKits.Kilograms(20, (2.5m, 2), (1.25m, 1)) with { Handles = [new(new("short handle", Mass.Kg(2)), 2)] };

    [Fact]
    public void Two_handles_share_the_pairs_and_one_has_them_all()
    {
        // Two handles: one pair of 2.5 each; a single pair of 1.25 serves only one handle.
        Amounts(Pair, Handles).Should().Equal(2, 7);
        Amounts(Single, Handles).Should().Equal(2, 4.5m, 7, 9.5m, 12, 14.5m);
    }

    [Fact]
    public void One_handle_alone_makes_no_pair() =>
        Loads.For(Pair, Handles with { Handles = [new(new("short handle", Mass.Kg(2)), 1)] }).Should().BeNull();

    [Fact]
    public void Handles_with_plates_of_their_own_leave_those_of_the_bars()
    {
        var own = Handles.Handles[0] with { Plates = [new(Mass.Lb(5), 2)] };

        Loads.For(Pair, Handles with { Handles = [own] })!.All.Select(l => l.Kilograms).Should().Equal(2, 2 + (10 * Mass.KilogramsPerPound));
    }

    [Fact]
    public void A_fixed_dumbbell_of_the_same_mass_is_taken_before_a_handle_is_loaded()
    {
        HandleLoading.StackFor(Mass.Kg(7), LoadType.DumbbellPair, Handles)!.Side.Should().Equal(Mass.Kg(2.5m));
        HandleLoading.StackFor(Mass.Kg(7), LoadType.DumbbellPair, Handles with { Dumbbells = [Mass.Kg(7)] }).Should().BeNull();
    }

    [Fact]
    public void Plates_laid_on_a_stack_halve_its_steps()
    {
        var row = SampleKits.Loaded(LoadType.MachineStack);
        var kit = SampleKits.Kilograms(20) with { Stack = [Mass.Kg(5), Mass.Kg(10)], StackAddOns = [Mass.Kg(1.25m), Mass.Kg(2.5m)] };

        Amounts(row, kit).Should().Equal(5, 6.25m, 7.5m, 8.75m, 10, 11.25m, 12.5m, 13.75m);
        PinAndAddOns.For(Mass.Kg(8.75m), row, kit)!.Text.Should().Be("the pin at 5 kg and 2.5 kg + 1.25 kg laid on");
    }

    [Fact]
    public void A_machine_with_a_stack_of_its_own_is_not_told_by_the_other()
    {
        var press = SampleKits.Loaded(LoadType.MachineStack) with { Equipment = ["leg press"] };
        var kit = SampleKits.Kilograms(20) with { Stack = [Mass.Kg(5)], Machines = [new("leg press", [Mass.Lb(50)], [])] };

        Loads.For(press, kit)!.All.Should().Equal(Mass.Lb(50));
        Amounts(SampleKits.Loaded(LoadType.MachineStack), kit).Should().Equal(5);
    }

    [Fact]
    public void The_belt_counts_where_its_mass_is_told_and_without_one_only_a_dumbbell_hangs()
    {
        var hung = SampleKits.Loaded(LoadType.AddedWeight);
        var kit = SampleKits.Kilograms(20, (5, 1)) with { Dumbbells = [Mass.Kg(4)] };

        Amounts(hung, kit with { Belt = new(Mass.Kg(1)) }).Should().Equal(0, 4, 6, 11);
        Amounts(hung, kit with { Belt = null }).Should().Equal(0, 4);
    }

    [Fact]
    public void A_machine_that_helps_helps_by_its_own_positions()
    {
        var dip = SampleKits.Loaded(LoadType.Assisted) with { Equipment = ["assist machine"] };

        Amounts(dip, SampleKits.Kilograms(20) with { Machines = [new("assist machine", [Mass.Kg(7), Mass.Kg(14)], [])] }).Should().Equal(0, 7, 14);
    }

    private static IEnumerable<decimal> Amounts(Exercise exercise, GymKit kit) => Loads.For(exercise, kit)!.All.Select(l => l.Amount);
}
