using CsCheck;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

public class PlateChangeTests
{
    private static readonly Bar Main = new("the bar", Mass.Kg(20));

    private static readonly Bar Light = new("the light bar", Mass.Kg(10));

    [Fact]
    public void The_same_stack_needs_nothing() =>
        Text(On(Main, 20, 5), On(Main, 20, 5)).Should().Be("same plates, nothing to change");

    [Fact]
    public void An_empty_bar_is_loaded_from_the_inside() =>
        Text(null, On(Main, 10, 2.5m)).Should().Be("put on 10 + 2.5 each side");

    [Fact]
    public void An_empty_bar_for_an_empty_bar_needs_nothing() =>
        Text(null, On(Main)).Should().Be("same plates, nothing to change");

    [Fact]
    public void What_stays_inside_stays_on() =>
        Text(On(Main, 20, 5), On(Main, 20, 10, 2.5m)).Should().Be("take off 5, put on 10 + 2.5, each side");

    [Fact]
    public void Plates_come_off_from_the_outside() =>
        Text(On(Main, 20, 10, 2.5m), On(Main, 20)).Should().Be("take off 2.5 + 10 each side");

    [Fact]
    public void A_plate_under_another_can_only_be_had_by_taking_both() =>
        Text(On(Main, 20, 5, 2.5m), On(Main, 20, 2.5m)).Should().Be("take off 2.5 + 5, put on 2.5, each side");

    [Fact]
    public void Another_bar_is_taken_once_the_first_is_stripped()
    {
        Text(On(Main, 20), On(Light, 2.5m)).Should().Be("take off 20 each side, take the light bar, put on 2.5 each side");
        Text(On(Main, 20), On(Light)).Should().Be("take off 20 each side, take the light bar");
        Text(On(Main), On(Light, 20)).Should().Be("take the light bar, put on 20 each side");
        Text(On(Main), On(Light)).Should().Be("take the light bar");
    }

    [Fact]
    public void Plates_of_both_units_are_told_apart()
    {
        var from = new BarStack(Main, [Mass.Kg(10)]);
        var to = new BarStack(Main, [Mass.Lb(10)]);

        Text(from, to).Should().Be("take off 10 kg, put on 10 lb, each side");
    }

    [Fact]
    public void Doing_as_told_gives_exactly_the_next_stack() =>
        Gen.Select(SampleKits.Small, Gen.Int[0, 1000], Gen.Int[0, 1000]).Sample(
            (kit, one, other) =>
            {
                var loads = Loads.For(SampleKits.Loaded(LoadType.Barbell), kit)!.All;
                var from = BarLoading.StackFor(loads[one % loads.Count], kit)!;
                var to = BarLoading.StackFor(loads[other % loads.Count], kit)!;
                Done(from, PlateChange.Between(from, to)).Should().Equal(to.Side);
            },
            iter: 200);

    private static IEnumerable<Mass> Done(BarStack from, PlateChange change)
    {
        var sleeve = new Stack<Mass>(from.Side);
        Do(sleeve, change);
        return sleeve.Reverse();
    }

    /// <summary>Changes a sleeve on which each plate told to come off must be the outermost.</summary>
    internal static void Do(Stack<Mass> sleeve, PlateChange change)
    {
        foreach (var plate in change.TakeOff)
        {
            sleeve.Pop().Should().Be(plate);
        }

        foreach (var plate in change.PutOn)
        {
            sleeve.Push(plate);
        }
    }

    private static string Text(BarStack? from, BarStack to) => PlateChange.Between(from, to).Text;

    private static BarStack On(Bar bar, params decimal[] plates) => new(bar, [.. plates.Select(Mass.Kg)]);
}
