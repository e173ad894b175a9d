using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Summary;
using static RackSide.Training.Tests.Planning.Tollbooth;

namespace RackSide.Training.Tests.Summary;

/// <summary>What is looked back at, worked out by hand.</summary>
public class ExerciseCourseTests
{
    [Fact]
    public void Loads_are_those_of_each_session_and_the_volume_that_of_each_week()
    {
        var course = Of("back-squat", (0, "60 kg", "5 5 5"), (4, "62.5 kg", "5 5 4"), (7, "65 kg", "5"));

        course.Unit.Should().Be("kg");
        course.Points(CourseOf.Load).Select(p => (p.Date, p.Value)).Should().Equal(
            (Monday, 60), (Monday.PlusDays(4), 62.5m), (Monday.PlusDays(7), 65));

        // 15 x 60 + 14 x 62.5 = 1775; 5 x 65 = 325.
        course.Points(CourseOf.Volume).Select(p => (p.Date, p.Value)).Should().Equal((Monday, 1775), (Monday.PlusDays(7), 325));
    }

    [Fact]
    public void What_was_loaded_in_another_unit_than_the_newest_is_left_out_and_not_converted()
    {
        var course = Of("back-squat", (0, "135 lb", "5"), (4, "60 kg", "5"), (7, "62.5 kg", "5"));

        course.Points(CourseOf.Load).Select(p => p.Value).Should().Equal(60, 62.5m);
        course.Points(CourseOf.Volume).Select(p => p.Value).Should().Equal(300, 312.5m);
        course.Points(CourseOf.Maximum).Should().HaveCount(2);
    }

    [Fact]
    public void The_span_for_one_repetition_is_that_of_the_estimate_and_a_slipped_set_gives_none()
    {
        // Epley 1985: 60 x (1 + 5/30) = 70 lies within the span of the formulas.
        var course = Of("back-squat", (0, "60 kg", "5"), (4, "80 kg", "5~"));

        course.Points(CourseOf.Maximum).Should().ContainSingle().Which.Should().Match<CoursePoint>(p => p.Value <= 70 && p.Upper >= 70 && p.Value >= 60);
        course.Maximum.Should().BeNull("the newest session says nothing");
        course.Records.Should().ContainSingle().Which.Load.Should().Be(Mass.Kg(60));
    }

    [Fact]
    public void Of_help_what_it_leaves_of_the_body_is_lifted()
    {
        var course = Of("assisted-chin-up", (0, "30 kg", "6 6"), (7, "25 kg", "6"));

        course.Points(CourseOf.Load).Select(p => p.Value).Should().Equal(30, 25);
        course.Points(CourseOf.Volume).Select(p => p.Value).Should().Equal(12 * (72 - 30), 6 * (72 - 25));
        course.Records.Single().Load.Should().Be(Mass.Kg(25), "less help is the record");
    }

    [Theory]
    [InlineData("push-up", SetKind.Share, "reps", 20, 45)]
    [InlineData("plank-forearm", SetKind.Hold, "s", 20, 45)]
    [InlineData("air-squat", SetKind.HeldShare, "s", 20, 45)]
    public void Without_a_load_the_best_set_and_all_of_a_week_are_told(string exercise, SetKind kind, string unit, int best, int all)
    {
        var course = Of(exercise, kind, (0, "-", "20 15 10"));

        course.Unit.Should().Be(unit);
        course.Points(CourseOf.Load).Single().Value.Should().Be(best);
        course.Points(CourseOf.Volume).Single().Value.Should().Be(all);
        course.Points(CourseOf.Maximum).Should().BeEmpty();
    }

    private static ExerciseCourse Of(string exercise, params (int Day, string Load, string Done)[] days) => Of(exercise, SetKind.Working, days);

    private static ExerciseCourse Of(string exercise, SetKind kind, params (int Day, string Load, string Done)[] days) => new(
        AllExercises[exercise], [.. days.Select(d => Day(AllExercises[exercise], kind, d))], [new(Monday.PlusDays(-1), Mass.Kg(72))]);

    private static Performance Day(Exercise exercise, SetKind kind, (int Day, string Load, string Done) told)
    {
        var date = Monday.PlusDays(told.Day);
        var words = told.Load.Split(' ');
        var load = words is [var amount, var unit]
            ? new Mass(decimal.Parse(amount, System.Globalization.CultureInfo.InvariantCulture), unit == "kg" ? MassUnit.Kilogram : MassUnit.Pound) : (Mass?)null;
        var asked = new Prescription
        {
            Slot = "slot",
            Motion = exercise.Motion,
            Exercise = exercise.Id,
            Scheme = new Scheme.Fixed(3, 5),
            Targets = [5],
            Load = load,
            Rest = Duration.FromMinutes(2),
            Why = new Reason("all-met", "all met"),
        };
        return new Performance(date, asked, [.. told.Done.Split(' ').Select((d, i) => new SetResult(
            new SetDone(new FactId("t", (told.Day * 10) + i + 1), date.AtMidnight().InUtc().ToInstant(), "slot", exercise.Id, kind, i + 1, 5, int.Parse(d.TrimEnd('~'), System.Globalization.CultureInfo.InvariantCulture), load), d.EndsWith('~')))], CutShort: false);
    }
}
