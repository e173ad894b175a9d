using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>Rack heights, bars that stay put, and a bar left loaded for the next exercise. Worked out by hand.</summary>
public class BarPlaceTests
{
    private static readonly Exercise Squat = SampleKits.Loaded(LoadType.Barbell) with { Id = "squat", Equipment = ["rack"] };
    private static readonly Exercise Row = SampleKits.Loaded(LoadType.Barbell) with { Id = "row" };
    private static readonly Exercise Bench = SampleKits.Loaded(LoadType.Barbell) with { Id = "bench", Equipment = ["rack", "bench"] };
    private static readonly GymKit Gym = SampleKits.Kilograms(20, (20, 1), (15, 2), (10, 1), (5, 2));

    [Fact]
    public void From_the_rack_to_the_floor_the_plates_stay_on() =>
        Change(Squat, [20, 5], Row, [20]).Text.Should().Be("take off 5 each side");

    [Fact]
    public void Before_the_hooks_are_moved_the_bar_is_stripped() =>
        Change(Squat, [20, 5], Bench, [20]).Text.Should().Be("take off 5 + 20 each side, move the bar, put on 20 each side");

    [Fact]
    public void Up_from_the_floor_into_the_rack_it_goes_bare() =>
        Change(Row, [10], Squat, []).Text.Should().Be("take off 10 each side, move the bar");

    [Fact]
    public void A_bare_bar_moves_without_a_word() =>
        Change(Squat, [], Bench, [20]).Text.Should().Be("put on 20 each side");

    [Fact]
    public void A_bar_that_moves_loaded_keeps_what_it_has() =>
        Change(Squat, [20, 5], Bench, [20], Gym.MainBar with { MovesLoaded = true }).Text.Should().Be("take off 5 each side");

    [Fact]
    public void A_bar_left_loaded_for_the_next_exercise_is_weighed_up()
    {
        // 80 is 20 + 10 or 15 + 15 a side. Alone the larger goes inside; with rows at 50 to come, 15 + 15 saves a plate:
        // 15 15, then one 15 off, is 2 on and 2 off; 20 10, then both off and 15 on, is 3 on and 3 off.
        var loads = new KitLoads(Gym);

        Side(loads.Row([new BarSet(Mass.Kg(80), Squat)], null)[0]).Should().Be("20 10");
        loads.Row([new BarSet(Mass.Kg(80), Squat), new BarSet(Mass.Kg(50), Row)], null).Select(Side).Should().Equal("15 15", "15");
    }

    [Fact]
    public void Where_the_bar_is_stripped_on_the_way_the_next_exercise_changes_nothing()
    {
        var row = new KitLoads(Gym).Row([new BarSet(Mass.Kg(80), Squat), new BarSet(Mass.Kg(50), Bench)], null);

        row.Select(Side).Should().Equal("20 10");
    }

    [Fact]
    public void What_is_stripped_on_the_way_does_not_count_for_the_ramp()
    {
        var left = new BarStack(Gym.MainBar, [Mass.Kg(15), Mass.Kg(15)]) { Place = BarPlace.RackHigh };
        var loads = Loads.For(Bench, Gym)!;

        Ramps.For(Training.Plans.RampKind.Short, Mass.Kg(80), Bench, loads, Gym, left)
            .Should().Equal(Ramps.For(Training.Plans.RampKind.Short, Mass.Kg(80), Bench, loads, Gym));
    }

    private static string Side(BarStack stack) => string.Join(' ', stack.Side.Select(p => p.Number));

    private static PlateChange Change(Exercise from, decimal[] on, Exercise to, decimal[] next, Bar? bar = null)
    {
        BarStack Stack(decimal[] plates, Exercise at) => new(bar ?? Gym.MainBar, [.. plates.Select(Mass.Kg)])
        {
            Place = new KitLoads(Gym).Row([new BarSet(Mass.Kg(20), at)], null)[0].Place,
        };
        return PlateChange.Between(Stack(on, from), Stack(next, to));
    }
}
