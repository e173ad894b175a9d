using NodaTime;
using RackSide.Tollbooth;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Summary;

namespace RackSide.Training.Tests.Summary;

/// <summary>The usual arithmetic of the trade, worked out by hand; no single source.</summary>
public class VolumeLoadTests
{
    private static readonly Exercise Squat = TollboothDay.Catalogue["back-squat"];

    // 5 x 5 x 60 = 1500 kg; 12, 10 and 8 reps with 40 = 1200 kg.
    [Theory]
    [InlineData(60, 1500, 5, 5, 5, 5, 5)]
    [InlineData(40, 1200, 12, 10, 8)]
    public void Reps_done_times_load(decimal kg, decimal expected, params int[] reps) =>
        VolumeLoad.Of([TollboothDay.SquatOnMonday(kg, reps)], TollboothDay.Catalogue, []).Should().Equal(Mass.Kg(expected));

    // 2 x 12.5 x 10 = 250 kg.
    [Fact]
    public void A_pair_counts_both_dumbbells() =>
        VolumeLoad.Lifted(Set(10, Mass.Kg(12.5m)), Squat with { LoadType = LoadType.DumbbellPair }, null).Should().Be(Mass.Kg(250));

    [Fact]
    public void One_side_at_a_time_counts_both_sides() =>
        VolumeLoad.Lifted(Set(8, Mass.Kg(20)), Squat with { LoadType = LoadType.DumbbellSingle, OneSided = true }, null).Should().Be(Mass.Kg(320));

    // (72 - 20) x 6 = 312 kg.
    [Fact]
    public void Of_help_the_body_less_the_help_is_lifted() =>
        VolumeLoad.Lifted(Set(6, Mass.Kg(20)), Squat with { LoadType = LoadType.Assisted }, Mass.Kg(72)).Should().Be(Mass.Kg(312));

    [Fact]
    public void Help_without_a_body_weight_in_its_unit_is_not_told()
    {
        var helped = Squat with { LoadType = LoadType.Assisted };
        VolumeLoad.Lifted(Set(6, Mass.Kg(20)), helped, null).Should().BeNull();
        VolumeLoad.Lifted(Set(6, Mass.Kg(20)), helped, Mass.Lb(160)).Should().BeNull();
    }

    [Fact]
    public void The_newest_body_weight_up_to_the_day_counts()
    {
        var helped = new Catalogue([Squat with { LoadType = LoadType.Assisted }]);
        var monday = TollboothDay.SquatOnMonday(20, 6);
        WeighIn[] weighIns = [new(monday.Head.Date.PlusDays(-7), Mass.Kg(72)), new(monday.Head.Date.PlusDays(1), Mass.Kg(90))];

        VolumeLoad.Of([monday], helped, weighIns).Should().Equal(Mass.Kg(312));
    }

    [Fact]
    public void Kilograms_and_pounds_are_never_summed()
    {
        var kilograms = TollboothDay.SquatOnMonday(60, 5, 5);
        var pounds = kilograms with { Facts = [.. kilograms.Facts.Select(f => f is SetDone s ? s with { Load = Mass.Lb(135) } : f)] };

        VolumeLoad.Of([pounds, kilograms], TollboothDay.Catalogue, []).Should().Equal(Mass.Kg(600), Mass.Lb(1350));
    }

    [Theory]
    [InlineData(SetKind.WarmUp)]
    [InlineData(SetKind.Hold)]
    [InlineData(SetKind.Share)]
    public void Only_working_sets_count(SetKind kind)
    {
        var session = TollboothDay.SquatOnMonday(60, 5, 5);
        var other = session with { Facts = [.. session.Facts.Select(f => f is SetDone s ? s with { Kind = kind } : f)] };

        VolumeLoad.Of([other], TollboothDay.Catalogue, []).Should().BeEmpty();
    }

    private static SetDone Set(int reps, Mass load) =>
        new(new FactId("test", 1), Instant.FromUnixTimeSeconds(0), "slot", Squat.Id, SetKind.Working, 1, reps, reps, load);
}
