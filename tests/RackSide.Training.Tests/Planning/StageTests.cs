using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Summary;
using static RackSide.Training.Tests.Planning.Tollbooth;

namespace RackSide.Training.Tests.Planning;

/// <summary>What the first weeks bring, and when the fast steps are over. Common practice, no source, but for the first weeks.</summary>
public class StageTests
{
    /// <summary>Early gains are mostly skill: Moritani and deVries 1979, Am J Phys Med 58(3):115-130 (from memory).</summary>
    [Theory]
    [InlineData(0, "Week 1: learn the lifts; easy is right.")]
    [InlineData(6, "Week 1: learn the lifts; easy is right.")]
    [InlineData(7, "Week 2: some soreness is usual, pain is not.")]
    [InlineData(41, "Week 6: steps may slow from here; that is usual.")]
    [InlineData(42, null)]
    public void Each_of_the_first_six_weeks_has_a_line(int days, string? line) =>
        EarlyWeeks.Line(Live(TrainingHistory.Empty, Monday, AsAsked), Monday.PlusDays(days)).Should().Be(line);

    [Fact]
    public void Before_the_first_day_there_is_none() => EarlyWeeks.Line(TrainingHistory.Empty, Monday).Should().BeNull();

    [Fact]
    public void Every_line_fits_the_narrowest_week_page()
    {
        var first = Live(TrainingHistory.Empty, Monday, AsAsked);
        var (stuck, date) = Months(4, Stuck);

        Enumerable.Range(0, 6).Select(w => EarlyWeeks.Line(first, Monday.PlusDays(7 * w))!.Length).Should().OnlyContain(l => l <= 50);
        MovingOn.Lines(stuck, AllExercises, Garage, date).Should().HaveCount(2).And.OnlyContain(l => l.Length <= 50);
    }

    [Fact]
    public void Loads_that_go_on_climbing_are_no_end_of_the_beginning()
    {
        var (history, date) = Months(4, (p, i) => p.Scheme is Scheme.Range ? 12 : p.Targets[i] + 2);

        MovingOn.Lines(history, AllExercises, Garage, date).Should().BeEmpty();
    }

    [Fact]
    public void When_most_lifts_stand_still_for_six_weeks_it_is_told_what_usually_follows()
    {
        var (history, date) = Months(4, Stuck);

        MovingOn.Lines(history, AllExercises, Garage, date).Should()
            .Equal("The fast steps of a beginner are behind you.", "Next: heavy and light days in turn; ask a coach.");
        WeekSummary.For(Beginners, AllExercises, Garage, Ottoline, history, [], date).Lines
            .Should().Contain("The fast steps of a beginner are behind you.");
    }

    [Fact]
    public void Two_deloads_in_vain_on_most_lifts_tell_it_too()
    {
        var (history, date) = Months(5, (p, i) => p.Load?.Amount > 40 && p.Slot is "squat" or "row" or "bench" or "press" ? 4 : Strong(p, i));

        MovingOn.Lines(history, AllExercises, Garage, date).Should().NotBeEmpty();
    }

    [Fact]
    public void In_the_first_twelve_weeks_nothing_is_said()
    {
        var (history, date) = Months(2, Stuck);

        MovingOn.Lines(history, AllExercises, Garage, date).Should().BeEmpty();
    }

    private static int Strong(Prescription p, int set) => p.Scheme is Scheme.Range ? 12 : p.Targets[set] + 2;

    /// <summary>Does no more than the bottom of what is asked, so that nothing is missed and nothing earned.</summary>
    private static int Stuck(Prescription p, int set) => p.Scheme is Scheme.Range r ? r.Low : p.Load?.Amount > 30 ? 4 : p.Targets[set];

    private static (TrainingHistory History, LocalDate Date) Months(int months, Func<Prescription, int, int> does)
    {
        var (history, date) = (TrainingHistory.Empty, Monday);
        for (; date < Monday.PlusDays(months * 30); date = date.PlusDays(3))
        {
            history = new([.. history.Sessions, Session(Today(history, date, StrengthDay), date, does)]);
        }

        return (history, date);
    }
}
