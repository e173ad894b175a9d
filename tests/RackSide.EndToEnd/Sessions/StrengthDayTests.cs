using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.EndToEnd.Sessions;

/// <summary>Whole strength days on the real program, from the numeric pad.</summary>
public sealed class StrengthDayTests
{
    private const string Monday = "2026-11-23T18:00";
    private const string Friday = "2026-11-27T18:00";
    private const int Fast = 400;
    private const int Watchable = 20;

    [Fact]
    public async Task A_whole_strength_day_and_the_next_one_that_asks_for_more()
    {
        using var gym = new GymFolder();
        var keys = await Train(gym, Monday, setUp: true);

        var session = gym.Sessions().Should().ContainSingle().Subject;
        session.Closed.Should().BeTrue();
        session.Sets.Should().OnlyContain(s => s.OnTarget);
        session.Sets.Count(s => s.Set.Slot == "squat" && s.Set.Kind == SetKind.Working).Should().Be(5);
        var holds = session.Sets.Count(s => s.Set.Kind == SetKind.Hold);
        var questions = session.Facts.OfType<RepsLeftTold>().ToList();
        questions.Should().HaveCount(session.Head.Prescriptions.Count(p => p.Search is not null), "one search set each").And.OnlyContain(q => q.Left == 4, "ENTER alone stays at the load");
        keys.Should().BeLessThanOrEqualTo(session.Sets.Count + holds + 4 + questions.Count);

        using var next = ScriptedLifter.WalkUp(gym, Friday, Fast);
        var plan = await next.Sees("ENTER begin");
        plan.Should().MatchRegex(@"squat +5x6 +20 kg").And.Contain("all 5x5 done on Mon 23 Nov: the next load is 13 % more, so 6 reps first");
        var fridayKeys = await Finish(next);

        var friday = gym.Sessions()[^1];
        friday.Sets.Where(s => s.Set.Slot == "squat" && s.Set.Kind == SetKind.Working)
            .Should().HaveCount(5).And.OnlyContain(s => s.Set.Load == Mass.Kg(20) && s.Set.Done == 6 && s.OnTarget);
        friday.Facts.OfType<RepsLeftTold>().Should().BeEmpty();
        fridayKeys.Should().BeLessThanOrEqualTo(friday.Sets.Count + friday.Sets.Count(s => s.Set.Kind == SetKind.Hold) + 4);
    }

    [Fact]
    public async Task Missed_reps_another_weight_and_an_undo_take_the_keys_they_should()
    {
        using var gym = new GymFolder();
        using var lifter = ScriptedLifter.WalkUp(gym, Monday, Watchable);
        await lifter.SetUp();
        await lifter.Begin();
        await lifter.TrainUntil("working set 1 of 5");
        await lifter.Sees(" LIFT ");

        lifter.Press("KP3");
        await lifter.Sees("ENTER did 3");
        await lifter.Lift();
        lifter.Press("KPEnter");
        await Settle(lifter, "20 kg x 3");
        lifter.Press("KP.");
        await lifter.Sees("taken back");
        lifter.Press("KP*", "KP+");
        await lifter.Sees("1.25");
        await lifter.Lift();
        lifter.Press("KPEnter");
        await Settle(lifter, "22.5 kg x 5");

        lifter.Press("KP/", "KP8");
        await lifter.Sees("All is written.");
        lifter.Press("KPEnter");
        (await lifter.Screen.WaitForEnd()).Should().Be(0);

        var session = gym.Sessions().Single();
        session.Closed.Should().BeFalse();
        session.Sets.Should().ContainSingle(s => s.Set.Kind == SetKind.Working).Which.Set.Should().BeEquivalentTo(new { Number = 1, Done = 5, Load = Mass.Kg(22.5m) });
        session.Facts.OfType<FactStruck>().Should().ContainSingle();
    }

    /// <summary>The set is written, with the second ENTER where it was accepted sooner than a set takes.</summary>
    private static async Task Settle(ScriptedLifter lifter, string set)
    {
        var screen = await lifter.Screen.WaitFor(s => s.Contains($"written: {set}") || s.Contains("ENTER again writes"), set);
        if (screen.Contains("ENTER again writes"))
        {
            await lifter.Lift();
            lifter.Press("KPEnter");
            await lifter.Sees($"written: {set}");
        }
    }

    private static async Task<int> Train(GymFolder gym, string clock, bool setUp)
    {
        using var lifter = ScriptedLifter.WalkUp(gym, clock, Fast);
        if (setUp)
        {
            await lifter.SetUp();
        }

        return await Finish(lifter);
    }

    private static async Task<int> Finish(ScriptedLifter lifter)
    {
        await lifter.Begin();
        await lifter.TrainUntil("done, leave");
        var week = await lifter.Sees("WEEK 48");
        week.Should().Contain("sets on target");
        lifter.Press("KPEnter");
        (await lifter.Screen.WaitForEnd()).Should().Be(0);
        lifter.Screen.Capture().Should().Contain("week 48 of 2026").And.Contain("next:");
        return lifter.Keys;
    }
}
