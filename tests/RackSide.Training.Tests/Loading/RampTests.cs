using CsCheck;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Tests.Loading;

/// <summary>The loads of the ramp's steps, moved by up to 5 points to handle fewer plates. Worked out by hand.</summary>
public class RampTests
{
    private static readonly GymKit Garage = SampleKits.Kilograms(20, (20, 1), (15, 1), (10, 1), (5, 1), (2.5m, 1));

    [Fact]
    public void A_full_ramp_to_100_spares_a_plate_by_80_instead_of_85()
    {
        // A side: 15 | 15+10 | 20+10 | 20+20 is five plates put on (so is 90, 20+15, but it is heavier); 85 is 32.5, and 15 | 15+10 | 15+10+5+2.5 | 20+20 is six.
        Text(RampKind.Full, Mass.Kg(100)).Should().Be("20x10 50x5 70x3 80x2");
    }

    [Fact]
    public void A_pound_ramp_to_135_needs_one_plate_at_a_time()
    {
        // A side: 10 | 25 | 35 | 45. The rule's own 65, 80 and 110 are 10 | 10+5+2.5 | 25+5+2.5 | 45, seven plates.
        Text(RampKind.Full, Mass.Lb(135), SampleKits.Pounds).Should().Be("45x10 65x5 95x3 115x2");
    }

    [Fact]
    public void Of_two_loads_equally_near_the_lighter_is_taken()
    {
        // A side: 15 | 15+10 | 20+20 and 15 | 20+10 | 20+20 put on four plates and are 5 from 75.
        Text(RampKind.Short, Mass.Kg(100)).Should().Be("50x5 70x3");
    }

    [Fact]
    public void What_the_exercise_before_left_on_the_bar_is_used()
    {
        // With 10+2.5 on, 45 is there already and within 5 points of 50; from the bare bar 50 is one plate of 15.
        Text(RampKind.Short, Mass.Kg(100), Garage).Should().Be("50x5 70x3");
        Text(RampKind.Short, Mass.Kg(100), Garage, [Mass.Kg(10), Mass.Kg(2.5m)]).Should().Be("45x5 70x3");
    }

    [Fact]
    public void Another_bar_left_loaded_is_of_no_use()
    {
        var ramp = Ramps.For(
            RampKind.Short, Mass.Kg(100), Squat, Loads.For(Squat, Garage)!, Garage, new(new("another", Mass.Kg(20)), [Mass.Kg(10), Mass.Kg(2.5m)]));

        ramp[0].Load.Should().Be(Mass.Kg(50));
    }

    [Fact]
    public void A_load_that_no_plate_is_spared_by_stays_the_nearest_to_its_step() =>
        Text(RampKind.Full, Mass.Kg(60)).Should().Be("20x10 30x5 40x3 50x2");

    [Fact]
    public void Dumbbells_have_no_plates_to_spare_and_keep_to_the_rule()
    {
        var kit = SampleKits.OneOfEach with { Dumbbells = [.. Enumerable.Range(2, 9).Select(n => Mass.Kg(2 * n))] };
        var dumbbells = SampleKits.Loaded(LoadType.DumbbellPair);

        Ramps.For(RampKind.Full, Mass.Kg(20), dumbbells, Loads.For(dumbbells, kit)!, kit)
            .Should().Equal(new RampSet(Mass.Kg(10), 5), new RampSet(Mass.Kg(14), 3), new RampSet(Mass.Kg(16), 2));
    }

    [Fact]
    public void A_ramp_ascends_below_the_working_load_within_5_points_or_by_the_rule() =>
        Gen.Select(SampleKits.Small, Gen.Int[0, 1000], Gen.OneOf(RampKind.Full, RampKind.Short), Gen.Int[0, 1000]).Sample(
            (kit, pick, kind, left) =>
            {
                var loads = Loads.For(Squat, kit)!;
                var work = loads.All[pick % loads.All.Count];
                var steps = RampSteps.For(kind, work, Squat, loads, kit);
                var ramp = Ramps.For(kind, work, Squat, loads, kit, BarLoading.StackFor(loads.All[left % loads.All.Count], kit));

                ramp.Select(r => r.Reps).Should().Equal(steps.Select(s => s.Reps));
                ramp.Append(new(work, 1)).Select(r => r.Load.Kilograms).Should().BeInAscendingOrder().And.OnlyHaveUniqueItems();
                ramp.All(r => loads.Has(r.Load)).Should().BeTrue();
                ramp.Zip(steps).All(p => p.First.Load == p.Second.Load
                    || Math.Abs(p.First.Load.Kilograms - p.Second.Band.Ideal.Kilograms) <= work.Kilograms * 0.05m).Should().BeTrue();
            },
            iter: 500);

    private static Exercise Squat { get; } = SampleKits.Loaded(LoadType.Barbell);

    private static string Text(RampKind kind, Mass work, GymKit? kit = null, IReadOnlyList<Mass>? left = null)
    {
        var gym = kit ?? SampleKits.StepsOfTwoAndAHalf;
        var ramp = Ramps.For(kind, work, Squat, Loads.For(Squat, gym)!, gym, left is null ? null : new(gym.MainBar, left));
        return string.Join(' ', ramp.Select(r => $"{r.Load.Number}x{r.Reps}"));
    }
}
