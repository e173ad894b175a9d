using RackSide.Training.History;

namespace RackSide.EndToEnd.Sessions;

/// <summary>A whole day between with a total in shares, in the order and with the slips that a real one has.</summary>
public sealed class HundredPushUpsTests
{
    private const string Wednesday = "2026-11-25T18:00";
    private const int Slow = 5;

    private const string Hundred = """
        name: A skills day with a hundred
        week: { wednesday: skills-day }
        days:
          skills-day:
            name: Skills day
            kind: skills
            slots:
              - { key: wrists, motion: preparation, exercises: [wrist-preparation], tick: 2 min }
              - { key: core, motion: core_brace, exercises: [plank-forearm], sets: 1, hold: 20-30 s, rest: 60 s }
              - { key: pull-ups, ladder: hang-to-pull-up, rest: 60 s }
              - { key: push-ups, motion: horizontal_push, exercises: [push-up], total: 100, rest: 60 s }
        """;

    [Fact]
    public async Task A_hundred_push_ups_in_seven_sets_after_a_false_start_a_hold_stopped_early_and_a_part_left_out()
    {
        using var gym = new GymFolder();
        using var lifter = ScriptedLifter.WalkUp(gym, Wednesday, Slow, arguments: ["--plan", gym.File("plan.yaml", Hundred)]);
        await lifter.SetUp();
        await lifter.Begin();
        await lifter.Sees("leave it out");
        await lifter.Lift();
        lifter.Press("KPEnter");

        await lifter.HoldAfterAFalseStart();
        await lifter.Screen.WaitFor(screen => Enumerable.Range(4, 10).Any(s => screen.Contains($"write {s} s", StringComparison.Ordinal)), "some of the hold");
        lifter.Press("KPEnter");
        await lifter.Sees("hold 1 written: ");
        lifter.Press("KP/", "KP5", "KP4");

        var left = 100;
        foreach (var reps in new[] { 20, 18, 16, 14, 12, 11, 9 })
        {
            await lifter.Screen.WaitFor(screen => screen.Contains($"{100 - left} of 100 done", StringComparison.Ordinal) && screen.Contains(" LIFT ", StringComparison.Ordinal), $"the set after {100 - left}");
            await lifter.Lift();
            lifter.Press([.. reps.ToString(System.Globalization.CultureInfo.InvariantCulture).Select(digit => $"KP{digit}"), "KPEnter"]);
            left -= reps;
            if (left > 0)
            {
                await lifter.Sees(" REST ");
                await lifter.Lift();
                lifter.Press("KPEnter");
            }
        }

        var week = await lifter.Sees("done, leave");
        await lifter.Lift();
        lifter.Press("KPEnter");
        (await lifter.Screen.WaitForEnd()).Should().Be(0);

        var printed = lifter.Screen.Capture();
        printed.Should().Contain("push-up: 100 of 100 in all").And.Contain("1 of 1 training days done");
        var session = gym.Sessions().Single();
        session.Closed.Should().BeTrue();
        session.LeftOut.Should().BeEquivalentTo("pull-ups");
        session.Sets.Where(s => s.Set.Kind == SetKind.Hold).Should().ContainSingle().Which.Set.Done.Should().BeInRange(4, 19);
        session.Sets.Where(s => s.Set.Kind == SetKind.Share).Select(s => s.Set.Done).Should().Equal(20, 18, 16, 14, 12, 11, 9);
        week.Should().Contain($"holds {session.Sets.Where(s => s.Set.Kind == SetKind.Hold).Sum(s => s.Set.Done)} s");
        session.Standing.OfType<ItemTicked>().Select(t => t.Item).Should().Contain("wrists");
    }
}
