using NodaTime;
using RackSide.Commands;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Strength;

namespace RackSide.Simulation;

/// <summary>Today's plan read from cards and the sessions it needs is the plan read from everything.</summary>
public class LookBackTests
{
    // Lives are long and restless: absences of weeks and months, exercises swapped for a season, a sore motion, an illness,
    // slots left out, form that slips, sets at another load, sessions begun and left, dates mended, a plan that rolls.
    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(3, false)]
    public void Every_plan_of_three_restless_years_is_the_same_with_the_whole_history_read(int seed, bool rolls)
    {
        var life = new RestlessLife(seed, rolls);

        var differing = life.Live(3 * 52).Where(day => PlanText.Of(day.Whole) != PlanText.Of(day.Bounded)).Select(day => $"{day.Date}: {Differences(PlanText.Of(day.Whole), PlanText.Of(day.Bounded))}").ToList();

        differing.Should().BeEmpty();
        life.Sessions.Count.Should().BeGreaterThan(5 * LookBack.Sessions, "the look back must have something to leave out");
        life.Reasons.Count.Should().BeGreaterThan(10, "many rules must have spoken");
    }

    // The lines that only one of them has, for whoever has to find out why.
    private static string Differences(string whole, string bounded) =>
        $"{string.Join(" / ", whole.Split('\n').Except(bounded.Split('\n')))} but {string.Join(" / ", bounded.Split('\n').Except(whole.Split('\n')))}";

    [Theory]
    [InlineData(4, true)]
    [InlineData(5, false)]
    public void Every_week_page_of_three_restless_years_is_the_same_with_the_whole_history_read(int seed, bool rolls)
    {
        var life = new RestlessLife(seed, rolls);

        foreach (var day in life.Live(3 * 52).Where(d => d.Date.DayOfWeek == IsoDayOfWeek.Sunday))
        {
            var (whole, bounded) = life.Week(day.Date);
            string.Join('\n', bounded.Lines).Should().Be(string.Join('\n', whole.Lines), $"it is {day.Date}");
            bounded.Lifts.Should().Equal(whole.Lifts);
        }
    }

    [Theory]
    [InlineData(6, true)]
    public void Every_exercise_is_looked_back_at_as_with_the_whole_history_read(int seed, bool rolls)
    {
        var life = new RestlessLife(seed, rolls);
        _ = life.Live(2 * 52).Count();

        var all = new TrainingHistory(life.Sessions);
        var done = life.Sessions.SelectMany(s => s.Prescriptions).Select(p => p.Exercise).Distinct().Where(e => all.Of(e).Any()).ToList();

        LookBack.Exercises(life.Cards).Should().BeEquivalentTo(done).And.HaveCountGreaterThan(10);
        foreach (var exercise in done)
        {
            var read = LookBack.Of(life.Cards, exercise).Select(c => c.Id).ToHashSet();
            new TrainingHistory([.. life.Sessions.Where(s => read.Contains(s.Head.Id))]).Of(exercise).Should().Equal(all.Of(exercise), exercise);
        }
    }

    [Fact]
    public void Records_by_cards_are_those_of_every_session_read()
    {
        var life = new RestlessLife(6, rolls: false);
        life.Live(3 * 52).Count().Should().BePositive();
        var (history, cards) = (new TrainingHistory(life.Sessions), life.Sessions.Select(LookBack.Card).ToList());
        var told = 0;
        foreach (var exercise in SimulatedYear.Exercises.All)
        {
            var asked = new ExerciseAsked(exercise.Name, exercise, null);
            var read = RepRecord.Of(exercise, history.Of(exercise.Id));

            asked.Records(SimulatedYear.Exercises, cards.Where(asked.In)).SelectMany(r => r.Records).Should().Equal(read, exercise.Name);
            asked.Count(cards).Should().Be(history.Of(exercise.Id).Count(), exercise.Name);
            told += read.Count;
        }

        told.Should().BeGreaterThan(30);
    }

    [Fact]
    public void A_shorter_look_back_is_found_out()
    {
        var life = new RestlessLife(3, rolls: false) { Needed = cards => cards.TakeLast(6).Select(c => c.Id).ToHashSet() };

        life.Live(2 * 52).Count(day => PlanText.Of(day.Whole) != PlanText.Of(day.Bounded)).Should().BePositive();
    }
}
