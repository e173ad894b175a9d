using CsCheck;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>Sleeves that are told, and plates that tell how thick they are. Hand-worked.</summary>
public class SleeveRoomTests
{
    private static readonly GymKit Short = SampleKits.Kilograms(20) with
    {
        Bars = [new("the bar", Mass.Kg(20)) { Sleeve = 100 }],
        Plates =
        [
            new(Mass.Kg(20), 2) { Thickness = 50 },
            new(Mass.Kg(10), 2) { Thickness = 30 },
            new(Mass.Kg(5), 2) { Thickness = 25 },
        ],
    };

    [Fact]
    public void A_load_whose_stack_does_not_fit_is_not_among_the_loads() =>
        Amounts(Short).Should().Equal(20, 30, 40, 50, 60, 70, 80, 100);

    [Fact]
    public void It_is_said_that_the_plates_are_there_and_the_sleeve_is_too_short() =>
        BarLoading.Explain(Mass.Kg(90), Short).Text.Should().Be("not loadable: the plates for 90 do not fit on the sleeve; 80 or 100");

    [Fact]
    public void A_thinner_stack_is_taken_where_the_one_with_fewer_plates_is_too_wide()
    {
        // 15 a side: one thick 15 of 90 mm, or 10 + 5 of 20 + 20 mm.
        var kit = Short with
        {
            Bars = [new("the bar", Mass.Kg(20)) { Sleeve = 60 }],
            Plates = [new(Mass.Kg(15), 1) { Thickness = 90 }, new(Mass.Kg(10), 1) { Thickness = 20 }, new(Mass.Kg(5), 1) { Thickness = 20 }],
        };

        BarLoading.StackFor(Mass.Kg(50), kit)!.Side.Should().Equal(Mass.Kg(10), Mass.Kg(5));
        BarLoading.Explain(Mass.Kg(50), kit).Text.Should().Be("loadable: 50 kg is 10 + 5 on each side of the bar");
    }

    [Fact]
    public void Plates_that_tell_no_thickness_take_no_room() =>
        Amounts(Short with { Plates = [.. Short.Plates.Select(p => p with { Thickness = null })] }).Last().Should().Be(160);

    [Fact]
    public void The_ramp_asks_for_no_stack_that_does_not_fit()
    {
        var squat = SampleKits.Loaded(LoadType.Barbell);
        var ramp = Ramps.For(Training.Plans.RampKind.Full, Mass.Kg(100), squat, Loads.For(squat, Short)!, Short);

        ramp.Select(r => r.Load.Amount).Should().BeSubsetOf(Amounts(Short));
    }

    [Fact]
    public void Every_load_of_a_short_sleeve_fits_and_none_that_could_fit_is_missing() =>
        SampleJobs.Narrow.Sample(
            job =>
            {
                var kit = SampleKits.Kilograms(20) with { Bars = [new("the bar", Mass.Kg(20)) { Sleeve = job.Sleeve }], Plates = job.Plates };
                var all = EverySide(job);
                Loads.For(SampleKits.Loaded(LoadType.Barbell), kit)!.All.Select(l => l.Kilograms)
                    .Should().Equal(all.Select(s => 20 + (2 * s.Sum(m => m.Kilograms))).Distinct().Order());
                foreach (var ways in all.GroupBy(s => s.Sum(m => m.Kilograms)))
                {
                    var best = ways.OrderBy(s => s.Count).ThenByDescending(s => string.Join(' ', s.Select(m => m.Kilograms.ToString("000.00000000000", null)))).First();
                    BarLoading.StackFor(Mass.Kg(20 + (2 * ways.Key)), kit)!.Side.Should().Equal(best);
                }
            },
            iter: 150);

    private static List<IReadOnlyList<Mass>> EverySide(PlateJob job) => job.Plates.OrderByDescending(p => p.Mass).Aggregate(
        new List<IReadOnlyList<Mass>> { Array.Empty<Mass>() },
        (sides, plates) => [.. sides.SelectMany(side => Enumerable.Range(0, plates.Pairs + 1).Select(n => (IReadOnlyList<Mass>)[.. side, .. Enumerable.Repeat(plates.Mass, n)]))])
        .Where(side => PlanChecks.Width(job, side) <= job.Sleeve).ToList();

    private static IEnumerable<decimal> Amounts(GymKit kit) => Loads.For(SampleKits.Loaded(LoadType.Barbell), kit)!.All.Select(l => l.Amount);
}
