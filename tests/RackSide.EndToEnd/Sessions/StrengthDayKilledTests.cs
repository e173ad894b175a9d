using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.EndToEnd.Sessions;

/// <summary>Strength days on the real program that a power cut breaks off, from the numeric pad.</summary>
public sealed class StrengthDayKilledTests
{
    private const string Monday = "2026-11-23T18:00";
    private const string Friday = "2026-11-27T18:00";
    private const int Fast = 400;
    private const int Watchable = 20;

    [Fact]
    public async Task A_first_load_is_searched_through_a_kill_and_the_next_session_goes_on_from_it()
    {
        using var gym = new GymFolder();
        using (var lifter = ScriptedLifter.WalkUp(gym, Monday, Fast))
        {
            await lifter.SetUp();
            await lifter.Begin();
            lifter.GoodRepsLeft.Enqueue("25");
            await lifter.TrainUntil("finding the load, set 2");
            await lifter.TrainUntil("HOW MANY LEFT?");
            await lifter.Sees("warm-up 2 written");
            lifter.Screen.Kill9();
            await lifter.Screen.WaitForEnd();
        }

        gym.Peek().Single().Sets.Select(s => s.Set.Load).Should().Equal(Mass.Kg(20), Mass.Kg(30));

        using (var again = ScriptedLifter.WalkUp(gym, gym.After(Duration.FromMinutes(1)), Fast))
        {
            await again.Sees("the question after search set 2");
            again.Press("KPEnter");
            var asked = await again.Sees("HOW MANY LEFT?");
            asked.Should().Contain("30 kg x 5").And.Contain("4 left: stay at 30 kg today");
            foreach (var answer in new[] { "15", "5" })
            {
                again.GoodRepsLeft.Enqueue(answer);
            }

            await again.TrainUntil("working set 1 of 5");
            await again.TrainUntil("done, leave");
            again.Press("KPEnter");
            (await again.Screen.WaitForEnd()).Should().Be(0);
        }

        var monday = gym.Sessions().Single();
        monday.Facts.OfType<RepsLeftTold>().Take(3).Select(t => t.Left).Should().Equal(25, 15, 5);
        monday.Sets.Where(s => s.Set.Slot == "squat" && s.Set.Kind == SetKind.Working)
            .Should().HaveCount(5).And.OnlyContain(s => s.Set.Load == Mass.Kg(37.5m) && s.OnTarget);

        using var next = ScriptedLifter.WalkUp(gym, Friday, Fast);
        (await next.Sees("ENTER begin")).Should().MatchRegex(@"squat +5x5 +40 kg");
    }

    // Standard S9 of docs/screen.md.
    [Fact]
    public async Task A_kill_in_mid_rest_loses_nothing_and_the_same_set_is_next()
    {
        using var gym = new GymFolder();
        using (var lifter = ScriptedLifter.WalkUp(gym, Monday, 3 * Watchable))
        {
            await lifter.SetUp();
            await lifter.Begin();
            await lifter.TrainUntil(" set 1 written");
            lifter.Screen.Kill9();
            await lifter.Screen.WaitForEnd();
        }

        gym.Peek().Single().Sets.Should().ContainSingle(s => s.Set.Kind == SetKind.Working);
        using var again = ScriptedLifter.WalkUp(gym, gym.After(Duration.FromSeconds(30)), Watchable);
        await again.Sees("working set 2 of 5");
        again.Press("KPEnter");

        await again.Sees("set 1 written: 20 kg x 5");
        await again.Sees(" LIFT ");
        (await again.Sees("working set 2 of 5")).Should().Contain("1/5");
        again.Keys.Should().Be(1);
    }
}
