using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;
using static RackSide.Training.Tests.Planning.Tollbooth;

namespace RackSide.Training.Tests.Summary;

public class WeekSummaryTests
{
    [Fact]
    public void A_week_in_plain_lines()
    {
        var history = TwoWeeks((p, i) => p.Slot == "press" ? 5 : p.Slot == "row" ? 12 : Strongly(p, i));
        WeighIn[] weighIns =
        [
            new(Monday, Mass.Kg(72.2m)), new(Monday.PlusDays(2), Mass.Kg(72.4m)),
            new(Monday.PlusDays(7), Mass.Kg(72.6m)), new(Monday.PlusDays(9), Mass.Kg(72.6m)),
        ];

        Of(history, weighIns, Monday.PlusDays(11)).Lines.Should().Equal(
            "week 46 of 2026, 9 to 15 Nov: 3 of 3 training days done",
            "done: Mon strength day, Wed skills day, Fri strength day",
            "squat           27.5 kg next    30 kg: up (from 20)",
            "row             27.5 kg next    30 kg: up (from 20)",
            "bench press       20 kg next    20 kg: same",
            "helped chin-up    30 kg next    30 kg: same",
            "overhead press    20 kg next    20 kg: 4 misses",
            "curl             2.5 kg next   2.5 kg: same",
            "extension        2.5 kg next   2.5 kg: same",
            "sets on target: 49 of 55; held for 240 s in all",
            "push-up: 100 of 100 in all",
            "body weight, mean of the week: 72.6 kg, +0.3 (at most +0.36 kg)",
            "Squat and row go up.",
            "Overhead press: the same again, resting 3 min.",
            "Week 2: some soreness is usual, pain is not.",
            "next: Mon 16 Nov, strength day");
    }

    [Fact]
    public void The_time_trained_runs_to_the_last_set_of_each_session_and_a_session_left_open_counts_four_hours()
    {
        var history = TwoWeeks(AsAsked);
        var minutes = new Queue<int>([30, 45, 60, 600]);
        var timed = new TrainingHistory([.. history.Sessions.Select(s => minutes.Count > 0 && s.Date >= Monday.PlusDays(7) ? Lasting(s, minutes.Dequeue()) : s)]);

        Of(timed, [], Monday.PlusDays(11)).Work.Trained.Should().Be(Duration.FromMinutes(30 + 45 + 60));
        Lasting(history.Sessions[0], 600).Should().Match<SessionRecord>(s => WeekWork.Of(IsoWeek.Of(s.Date), new TrainingHistory(new[] { s }, null), AllExercises).Trained == Duration.FromHours(4));
    }

    [Fact]
    public void Sleep_is_the_mean_of_the_nights_that_ended_in_the_week_and_hidden_with_the_rest()
    {
        var nights = new[] { (-1, 9), (0, 6), (3, 5), (6, 6), (7, 9) }.Select((n, i) =>
            (Fact)new DayTold(new FactId("told", i + 1), Monday.AtMidnight().InUtc().ToInstant(), Monday.PlusDays(n.Item1)) { Slept = Duration.FromHours(n.Item2) });
        var history = new TrainingHistory([], [.. nights]);

        var sleep = Of(history, [], Monday.PlusDays(6)).Sleep!;

        (sleep.Mean.TotalMinutes, sleep.Nights, sleep.UnderFloor).Should().Be((340, 3, true));
        sleep.Text.Should().Be("5 h 40 a night over 3 nights, under the floor of 6 h");
        Of(history, [], Monday.PlusDays(20)).Sleep.Should().BeNull("no night of that week was told");
        WeekSummary.For(Beginners, AllExercises, Garage, Ottoline with { Body = new() { Hidden = true } }, history, [], Monday.PlusDays(6)).Sleep.Should().BeNull();
    }

    private static SessionRecord Lasting(SessionRecord session, int minutes) => session with
    {
        Facts = [.. session.Facts.Select(f => f is SetDone set ? set with { At = session.Head.Begun + Duration.FromMinutes(minutes) } : f)],
    };

    [Fact]
    public void On_leaving_a_small_terminal_holds_it_with_the_prompt()
    {
        var few = Of(TwoWeeks(Strongly), [new(Monday.PlusDays(7), Mass.Kg(72.6m))], Monday.PlusDays(11)).Few;

        few.Should().HaveCountLessThanOrEqualTo(12).And.OnlyContain(l => l.Length <= 50);
        few[0].Should().Be("week 46 of 2026: 3 of 3 training days done");
        few.Should().Contain(l => l.StartsWith("squat ")).And.Contain("Squat goes up.");
        few[^1].Should().Be("next: Mon 16 Nov, strength day");
    }

    [Fact]
    public void No_line_is_longer_than_72_characters()
    {
        var longName = Beginners with { Days = [.. Beginners.Days.Select(d => d with { Name = new string('n', 60) })] };
        var history = TwoWeeks(AsAsked);

        var lines = WeekSummary.For(longName, AllExercises, Garage, Ottoline, history, [], Monday.PlusDays(11)).Lines;

        lines.Should().OnlyContain(l => l.Length <= 72);
        lines.Should().Contain(l => l.EndsWith("..."));
    }

    [Fact]
    public void A_newcomer_reads_what_comes_and_no_numbers_that_are_not_there()
    {
        var summary = Of(TrainingHistory.Empty, [], Monday);

        summary.Lines.Should().StartWith(
        [
            "week 45 of 2026, 2 to 8 Nov: 0 of 3 training days done",
            "done: nothing yet",
            "squat          new, begins at 20 kg",
        ]);
        summary.Conclusions.Should().Equal("Nothing was done this week.");
        summary.Next.Should().Be(Monday);
        summary.Body.Should().BeNull();
        summary.Lines.Should().NotContain(l => l.Contains("body weight"));
    }

    [Fact]
    public void After_the_third_miss_the_word_is_lighter()
    {
        var history = TwoWeeks(Strongly, until: 4);
        var date = Monday.PlusDays(7);
        for (var i = 0; i < 3; i++, date = date.PlusDays(i % 2 == 0 ? 3 : 4))
        {
            history = Live(history, date, (p, s) => p.Slot == "squat" ? 4 : p.Targets[s]);
            history = Live(history, date.PlusDays(2), AsAsked);
        }

        var squat = Of(history, [], history.Sessions[^1].Head.Date).Lifts[0];

        (squat.Now, squat.Next, squat.Word).Should().Be((Mass.Kg(25), Mass.Kg(22.5m), "lighter"));
    }

    [Fact]
    public void Less_help_is_up()
    {
        var history = Live(TrainingHistory.Empty, Monday, (p, i) => p.Slot == "pull" ? 12 : p.Targets[i]);

        var pull = Of(history, [], Monday).Lifts.Single(l => l.Slot == "pull");

        (pull.Now, pull.Next, pull.Word).Should().Be((Mass.Kg(30), Mass.Kg(25), "up"));
    }

    [Fact]
    public void The_next_strength_day_is_looked_for_past_a_skills_day()
    {
        var summary = Of(Live(TrainingHistory.Empty, Monday, Strongly), [], Monday);

        summary.NextDay.Should().Be(SkillsDay);
        summary.Lifts[0].Next.Should().Be(Mass.Kg(22.5m));
    }

    [Fact]
    public void A_body_weight_over_the_cap_is_said_where_nothing_else_wants_attention()
    {
        var history = Live(TrainingHistory.Empty, Monday, Strongly);
        WeighIn[] weighIns = [new(Monday.PlusDays(-3), Mass.Kg(72)), new(Monday, Mass.Kg(73))];

        Of(history, weighIns, Monday).Conclusions.Should()
            .Equal("Squat goes up.", "Body weight rises faster than 0.36 kg a week.");
    }

    [Fact]
    public void A_struck_set_is_not_counted()
    {
        var history = Live(TrainingHistory.Empty, Monday, AsAsked);
        var session = history.Sessions[0];
        var struck = new FactStruck(new FactId("test", 999), session.Head.Begun, session.Facts[0].Id);
        var corrected = new TrainingHistory([session with { Facts = [.. session.Facts, struck] }]);

        Of(corrected, [], Monday).Work.Sets.Should().Be(Of(history, [], Monday).Work.Sets - 1);
    }

    [Fact]
    public void A_week_over_the_year_end_names_both_months()
    {
        var summary = Of(TrainingHistory.Empty, [], new LocalDate(2027, 1, 1));

        summary.Lines[0].Should().StartWith("week 53 of 2026, 28 Dec to 3 Jan:");
    }

    [Fact]
    public void A_plan_without_strength_days_has_no_lift_lines()
    {
        var skillsOnly = Beginners with { Week = new Dictionary<IsoDayOfWeek, string> { [IsoDayOfWeek.Friday] = "skills" } };

        WeekSummary.For(skillsOnly, AllExercises, Garage, Ottoline, TrainingHistory.Empty, [], Monday).Lifts.Should().BeEmpty();
    }

    private static WeekSummary Of(TrainingHistory history, IReadOnlyList<WeighIn> weighIns, LocalDate today) =>
        WeekSummary.For(Beginners, AllExercises, Garage, Ottoline, history, weighIns, today);

    /// <summary>Two reps over in the squat, so that its load goes up at once although the step is a big one.</summary>
    private static int Strongly(Prescription p, int set) => p.Slot == "squat" ? p.Targets[set] + 2 : p.Targets[set];

    private static TrainingHistory TwoWeeks(Func<Prescription, int, int> does, int until = 11) =>
        Enumerable.Range(0, until + 1).Aggregate(TrainingHistory.Empty, (h, day) => Live(h, Monday.PlusDays(day), does));
}
