using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.EndToEnd.Sessions;

/// <summary>The day between: ticks, holds with their timer, a total; on every size of screen, and on the text console of Linux.</summary>
public sealed class SkillsDayTests
{
    private const string Plan = """
        name: A short skills day
        week: { wednesday: skills-day }
        days:
          skills-day:
            name: Skills day
            kind: skills
            slots:
              - { key: wrists, motion: preparation, exercises: [wrist-preparation], tick: 2 min }
              - { key: core, motion: core_brace, exercises: [plank-forearm], sets: 3, hold: 10-30 s, rest: 60 s }
              - { key: push-ups, motion: horizontal_push, exercises: [push-up], total: 30, rest: 60 s }
        """;

    private const string Wednesday = "2026-11-25T18:00";
    private const int Slow = 5;
    private const int Fast = 400;

    [Theory]
    [InlineData(80, 24, "tmux-256color")]
    [InlineData(120, 40, "tmux-256color")]
    [InlineData(50, 15, "linux")]
    public async Task A_false_start_a_hold_stopped_early_and_the_rest_left_out(int columns, int rows, string terminal)
    {
        using var gym = new GymFolder();
        using var lifter = ScriptedLifter.WalkUp(gym, Wednesday, Slow, columns, rows, terminal, "--plan", gym.File("plan.yaml", Plan));
        await lifter.SetUp();
        await lifter.Begin();
        await lifter.Sees("leave it out");
        await lifter.Lift();
        lifter.Press("KP*");

        await lifter.HoldAfterAFalseStart();
        await lifter.Screen.WaitFor(screen => Enumerable.Range(4, 4).Any(s => screen.Contains($"write {s} s")), "a few seconds of hold");
        lifter.Press("KPEnter");
        await lifter.Sees("hold 1 written: ");
        lifter.Press("KP/", "KP5", "KP3");
        await lifter.Sees("done, leave");
        await lifter.Lift();
        lifter.Press("KPEnter");
        (await lifter.Screen.WaitForEnd()).Should().Be(0);

        var session = gym.Sessions().Single();
        session.Head.Kind.Should().Be(DayKind.Skills);
        session.Closed.Should().BeTrue();
        session.Sets.Should().ContainSingle().Which.Set.Should().Match<SetDone>(
            s => s.Kind == SetKind.Hold && s.Target == 10 && s.Done >= 4 && s.Done < 10, "ENTER was pressed when the key line said 4 to 7 s");
        session.LeftOut.Should().BeEquivalentTo("wrists", "core", "push-ups");
    }

    [Fact]
    public async Task Everything_to_plan_with_the_total_in_shares()
    {
        using var gym = new GymFolder();
        using var lifter = ScriptedLifter.WalkUp(gym, Wednesday, Fast, arguments: ["--plan", gym.File("plan.yaml", Plan)]);
        await lifter.SetUp();
        await lifter.Begin();
        await lifter.TrainUntil("done, leave");
        lifter.Press("KPEnter");
        (await lifter.Screen.WaitForEnd()).Should().Be(0);

        var session = gym.Sessions().Single();
        session.Sets.Where(s => s.Set.Kind == SetKind.Hold).Should().HaveCount(3).And.OnlyContain(s => s.OnTarget);
        session.Sets.Where(s => s.Set.Kind == SetKind.Share).Sum(s => s.Set.Done).Should().Be(30);
        session.LeftOut.Should().BeEmpty();
    }
}
