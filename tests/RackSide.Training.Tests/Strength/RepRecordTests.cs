using NodaTime;
using RackSide.Tollbooth;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Strength;

namespace RackSide.Training.Tests.Strength;

public class RepRecordTests
{
    private static readonly Exercise Squat = TollboothDay.Catalogue["back-squat"];
    private static readonly LocalDate Monday = new(2026, 11, 23);

    [Fact]
    public void For_each_number_of_reps_the_heaviest_load_is_the_record_and_the_first_day_it_was_done()
    {
        var records = RepRecord.Of(Squat,
        [
            Day(Monday, (60, 5), (60, 4)),
            Day(Monday.PlusDays(4), (62.5m, 5), (60, 5)),
            Day(Monday.PlusDays(7), (62.5m, 5), (55, 4)),
        ]);

        records.Should().Equal(
            new RepRecord(4, Mass.Kg(60), Monday),
            new RepRecord(5, Mass.Kg(62.5m), Monday.PlusDays(4)));
    }

    // Help is taken off what is lifted: less of it is progress (common practice, no source).
    [Fact]
    public void Of_help_the_least_is_the_record() =>
        RepRecord.Of(Squat with { LoadType = LoadType.Assisted }, [Day(Monday, (30, 8)), Day(Monday.PlusDays(4), (25, 8), (30, 8))])
            .Should().Equal(new RepRecord(8, Mass.Kg(25), Monday.PlusDays(4)));

    [Fact]
    public void A_load_is_kept_in_the_unit_it_was_loaded_in_and_compared_as_a_mass()
    {
        var pounds = Day(Monday.PlusDays(4), (135, 5));
        var asPounds = pounds with { Sets = [.. pounds.Sets.Select(s => s with { Set = s.Set with { Load = Mass.Lb(135) } })] };

        RepRecord.Of(Squat, [Day(Monday, (61, 5)), asPounds]).Should().Equal(new RepRecord(5, Mass.Lb(135), Monday.PlusDays(4)));
    }

    [Fact]
    public void Slipped_form_missed_sets_and_more_than_twelve_reps_are_no_records()
    {
        var slipped = Day(Monday, (60, 5));
        var told = slipped with { Sets = [.. slipped.Sets.Select(s => s with { FormSlipped = true })] };

        RepRecord.Of(Squat, [told, Day(Monday, (60, 0), (20, 13))]).Should().BeEmpty();
    }

    [Fact]
    public void Where_no_load_is_told_there_are_none()
    {
        var day = Day(Monday, (60, 5));
        RepRecord.Of(Squat, [day with { Sets = [.. day.Sets.Select(s => s with { Set = s.Set with { Load = null } })] }]).Should().BeEmpty();
    }

    private static Performance Day(LocalDate date, params (decimal Kg, int Reps)[] sets)
    {
        var asked = new TrainingHistory([TollboothDay.SquatOnMonday(60, 5)]).Of("back-squat").Single();
        return asked with
        {
            Date = date,
            Sets = [.. sets.Select(s => asked.Sets[0] with { Set = asked.Sets[0].Set with { Done = s.Reps, Load = Mass.Kg(s.Kg) } })],
        };
    }
}
