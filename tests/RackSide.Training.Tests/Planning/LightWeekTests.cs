using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using static RackSide.Training.Tests.Planning.Tollbooth;

namespace RackSide.Training.Tests.Planning;

/// <summary>A light week begins, lasts and ends. Common practice, no source.</summary>
public class LightWeekTests
{
    private static readonly string[] Tired = ["squat", "row"];

    [Fact]
    public void Two_main_lifts_that_stall_on_one_day_make_the_whole_day_light()
    {
        var (stalled, date) = Stalled(Tired);

        var day = Day(stalled, date);

        day.Should().OnlyContain(p => p.Why.Code == Reasons.LightWeek);
        day.Select(p => p.Targets.Count).Should().Equal(3, 2, 2, 2, 2, 2, 2, 2);
        day[0].Why.Line.Should().StartWith("light week, 2 main lifts stalled: 10 % lighter");
        day.Zip(Before(stalled)).Should().OnlyContain(p => p.First.Load == null || LoadUsed.IsHarder(p.First.Load, p.Second, AllExercises[p.First.Exercise]) == false);
    }

    [Theory]
    [InlineData("squat")]
    [InlineData("squat", "curl")]
    public void One_main_lift_alone_or_with_arm_work_does_not(params string[] slots)
    {
        var (stalled, date) = Stalled(slots);

        Day(stalled, date).Select(p => p.Why.Code).Should().NotContain(Reasons.LightWeek).And.Contain(Reasons.ThirdMiss);
    }

    [Fact]
    public void It_lasts_a_week_and_then_the_loads_come_back()
    {
        var (stalled, date) = Stalled(Tired);
        var before = Before(stalled);
        var first = Does(stalled, date);
        var second = Does(first, date.PlusDays(3));

        var within = Day(first, date.PlusDays(3));
        var after = Day(second, date.PlusDays(7));

        within.Should().OnlyContain(p => p.Why.Code == Reasons.LightWeek);
        within[0].Why.Line.Should().StartWith("light week, since ");
        within.Select(p => p.Load).Should().Equal(Day(stalled, date).Select(p => p.Load), "the second light day is as light as the first");
        after.Select(p => p.Targets.Count).Should().Equal(5, 3, 3, 3, 3, 3, 3, 3);
        (after[0].Load < before[0]).Should().BeTrue("a lift that stalled begins again lighter");
        after[4].Load.Should().Be(before[4], "a lift that did not goes on where it was");
    }

    [Fact]
    public void It_is_not_begun_again_for_the_same_misses_but_for_new_ones_it_is()
    {
        var (stalled, date) = Stalled(Tired);
        var rested = Does(Does(stalled, date), date.PlusDays(3));
        var (again, later) = Stalled(Tired, rested, date.PlusDays(7));

        Day(rested, date.PlusDays(7)).Should().NotContain(p => p.Why.Code == Reasons.LightWeek);
        Day(again, later).Should().OnlyContain(p => p.Why.Code == Reasons.LightWeek);
    }

    [Fact]
    public void A_skills_day_in_it_stays_as_it_is()
    {
        var (stalled, date) = Stalled(Tired);

        Planner.Prescriptions(SkillsDay, AllExercises, Garage, Ottoline, Does(stalled, date), date.PlusDays(2))
            .Should().NotContain(p => p.Why.Code == Reasons.LightWeek);
    }

    /// <summary>Strong for a while, so that loads are well above the lightest, then three misses of those slots, twice a week.</summary>
    private static (TrainingHistory History, LocalDate Date) Stalled(string[] slots, TrainingHistory? from = null, LocalDate? on = null)
    {
        var (history, date) = (from ?? TrainingHistory.Empty, on ?? Monday);
        for (var i = 0; from is null && i < 10; i++, date = date.PlusDays(3))
        {
            history = Does(history, date, (p, s) => p.Scheme is Scheme.Range ? 12 : p.Targets[s] + 2);
        }

        for (var i = 0; i < 3; i++, date = date.PlusDays(3))
        {
            history = Does(history, date, (p, s) => slots.Contains(p.Slot) ? 3 : p.Targets[s]);
        }

        return (history, date);
    }

    private static TrainingHistory Does(TrainingHistory history, LocalDate date, Func<Prescription, int, int>? does = null) => new(
        [.. history.Sessions, Session(Today(history, date, StrengthDay), date, does ?? AsAsked)]);

    private static IReadOnlyList<Prescription> Day(TrainingHistory history, LocalDate date) =>
        Planner.Prescriptions(StrengthDay, AllExercises, Garage, Ottoline, history, date);

    private static List<Mass?> Before(TrainingHistory history) => [.. history.Sessions[^1].Prescriptions.Select(p => p.Load)];
}
