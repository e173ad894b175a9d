using CsCheck;
using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Plans;

namespace RackSide.Training.Tests.Planning;

/// <summary>"I have 35 minutes." Common practice, no source.</summary>
public class TimeBudgetTests
{
    private static readonly IReadOnlyList<Prescription> Whole =
        [.. Tollbooth.Today(TrainingHistory.Empty, Tollbooth.Monday).Prescriptions.Select(p => p with { Search = null })];

    // By hand: squats 5 x (40 + 120) s = 800 s; each of the four that follow 3 x (40 + 90) s, so 130 s a set; the arms
    // 6 x 40 + 3 x (15 + 60) s = 465 s; the core 3 x (20 + 60) s = 240 s. In all 3065 s, 51 min; no ramps with the empty bar.
    [Theory] // A number is the sets that are left.
    [InlineData(52, "squat 5, row 3, bench 3, pull 3, press 3, curl 3, extension 3, core 3")]
    [InlineData(51, "squat 5, row 3, bench 3, pull 3, press 3, core 3")]
    [InlineData(43, "squat 5, row 3, bench 3, pull 3, press 3")]
    [InlineData(39, "squat 5, row 3, bench 3, pull 3, press 2")]
    [InlineData(35, "squat 5, row 3, bench 3, pull 2, press 2")]
    [InlineData(30, "squat 5, row 2, bench 2, pull 2, press 1")]
    [InlineData(25, "squat 5, row 2, bench 1, pull 1, press 1")]
    [InlineData(20, "squat 5, row 1, bench 1, pull 1")]
    [InlineData(14, "squat 5")]
    [InlineData(10, "squat 5")]
    public void The_less_time_the_less_of_what_matters_least(int minutes, string left)
    {
        var trimmed = Trim(minutes);

        string.Join(", ", trimmed.Kept.Select(p => $"{p.Slot} {p.Targets.Count}")).Should().Be(left);
        trimmed.Fits.Should().Be(minutes > 10);
    }

    [Fact]
    public void Squats_and_every_warm_up_stay_and_what_is_left_out_is_told_in_order() => Gen.Int[1, 90].Sample(minutes =>
    {
        var trimmed = Trim(minutes);
        trimmed.Kept[0].Should().Be(Whole[0]);
        trimmed.Kept.Should().OnlyContain(k => Whole.Any(w => w.Slot == k.Slot && w.Ramp == k.Ramp && w.Targets.Count == k.Targets.Count + k.SetsLeftOut));
        trimmed.Kept.Concat(trimmed.NoTimeFor).Select(p => p.Slot).Should().BeEquivalentTo(Whole.Select(p => p.Slot));
        (trimmed.Estimate <= Duration.FromMinutes(minutes)).Should().Be(trimmed.Fits);
        TimeEstimate.Of(trimmed.Kept, Tollbooth.AllExercises, LifterPace.Usual).Should().Be(trimmed.Estimate);
    });

    [Fact]
    public void A_minute_more_never_leaves_out_more() => Gen.Int[1, 90].Sample(minutes =>
        Trim(minutes + 1).Kept.Sum(p => p.Targets.Count).Should().BeGreaterThanOrEqualTo(Trim(minutes).Kept.Sum(p => p.Targets.Count)));

    [Fact]
    public void On_a_skills_day_the_preparation_stays()
    {
        var skills = Planner.Prescriptions(Tollbooth.SkillsDay, Tollbooth.AllExercises, Tollbooth.Garage, Tollbooth.Ottoline, TrainingHistory.Empty, Tollbooth.Monday);

        TimeBudget.Trim(skills, Tollbooth.AllExercises, Duration.FromMinutes(1), LifterPace.Usual).Kept.Select(p => p.Slot).Should().StartWith("wrists");
    }

    [Fact]
    public void A_plan_in_less_time_tells_what_it_leaves_out()
    {
        var todays = Tollbooth.Today(TrainingHistory.Empty, Tollbooth.Monday) with { Prescriptions = Whole };

        var within = Planner.Within(todays, Duration.FromMinutes(35), Tollbooth.AllExercises, Tollbooth.Garage, TrainingHistory.Empty);

        within.LeftOut.Should().Equal(
            "no time for curl, extension, plank: left out, not missed",
            "fewer sets of helped chin-up, overhead press");
        within.Trimmed.Should().BeTrue();
        todays.Trimmed.Should().BeFalse();
        Planner.Within(todays, Duration.FromMinutes(10), Tollbooth.AllExercises, Tollbooth.Garage, TrainingHistory.Empty)
            .LeftOut.Should().Contain("it takes longer than 10 min: the warm-up and the first lift are never cut");
    }

    [Fact]
    public void Sets_left_out_for_time_are_no_miss_and_earn_no_step()
    {
        var todays = Tollbooth.Today(TrainingHistory.Empty, Tollbooth.Monday);
        var within = Planner.Within(todays, Duration.FromMinutes(35), Tollbooth.AllExercises, Tollbooth.Garage, TrainingHistory.Empty);
        var history = new TrainingHistory([Tollbooth.Session(within, Tollbooth.Monday, (p, _) => p.Slot == "press" ? 12 : p.Targets[0])]);

        var next = Tollbooth.Today(history, Tollbooth.Monday.PlusDays(4), Tollbooth.StrengthDay).Prescriptions;

        next.Single(p => p.Slot == "press").Why.Code.Should().Be("cut-short");
        next.Single(p => p.Slot == "press").Targets.Should().HaveCount(3);
        next.Single(p => p.Slot == "squat").Why.Code.Should().Be("reps-first");
        next.Single(p => p.Slot == "curl").Why.Code.Should().Be("first-time");
    }

    [Theory]
    [InlineData(40, 40)]
    [InlineData(75, 75)]
    [InlineData(25, 25)]
    [InlineData(2, 40)] // Quicker than a set can be: the times mean nothing, and the usual pace is taken.
    [InlineData(900, 40)] // Slower than anybody is between all sets: so too.
    public void The_pace_is_learned_from_when_sets_were_accepted(int seconds, int learned)
    {
        LifterPace.Of(Lived(seconds)).WorkingSet.Should().Be(Duration.FromSeconds(learned));
    }

    [Fact]
    public void One_long_telephone_call_teaches_nothing_and_two_sets_are_too_few()
    {
        var history = Lived(50);
        var late = history.Sessions[0] with
        {
            Facts = [.. history.Sessions[0].Facts.Select((f, i) => f is SetDone s && i > 8 ? s with { At = s.At + Duration.FromMinutes(3) } : f)],
        };

        LifterPace.Of(new TrainingHistory([late, .. history.Sessions.Skip(1)])).WorkingSet.Should().Be(Duration.FromSeconds(50));
        LifterPace.Of(new TrainingHistory([late with { Facts = [.. late.Facts.Take(3)] }])).Should().Be(LifterPace.Usual);
    }

    [Fact]
    public void A_slower_lifter_gets_a_longer_estimate_and_a_shorter_plan_in_the_same_time()
    {
        var slow = new LifterPace(Duration.FromSeconds(90), Duration.FromSeconds(60));

        TimeEstimate.Of(Whole, Tollbooth.AllExercises, slow).Should().BeGreaterThan(TimeEstimate.Of(Whole, Tollbooth.AllExercises));
        TimeBudget.Trim(Whole, Tollbooth.AllExercises, Duration.FromMinutes(40), slow).Kept.Sum(p => p.Targets.Count)
            .Should().BeLessThan(Trim(40).Kept.Sum(p => p.Targets.Count));
    }

    private static TrimmedPlan Trim(int minutes) => TimeBudget.Trim(Whole, Tollbooth.AllExercises, Duration.FromMinutes(minutes), LifterPace.Usual);

    // Two strength days on which each set of the ungrouped exercises took so long, its rest not counted.
    private static TrainingHistory Lived(int seconds)
    {
        var todays = Tollbooth.Today(TrainingHistory.Empty, Tollbooth.Monday);
        return new([.. new[] { 0, 4 }.Select(day => Paced(Tollbooth.Session(todays, Tollbooth.Monday.PlusDays(day), Tollbooth.AsAsked), seconds))]);
    }

    private static SessionRecord Paced(SessionRecord session, int seconds)
    {
        var at = session.Head.Begun;
        return session with
        {
            Facts = [.. session.Facts.Select(f => f is SetDone s
                ? s with { At = at += session.Prescriptions.Single(p => p.Slot == s.Slot).Rest + Duration.FromSeconds(seconds) }
                : f)],
        };
    }
}
