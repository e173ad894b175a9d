using NodaTime;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.EndToEnd.Sessions;

/// <summary>Two lifters on one bar on the real program, one of them in pounds, from the numeric pad.</summary>
public sealed class TwoOnOneBarTests
{
    private const int Fast = 400;

    [Fact]
    public async Task Two_lifters_share_the_bar_through_a_miss_and_a_kill_until_one_leaves()
    {
        using var gym = new GymFolder();
        await Household(gym);
        using (var both = ScriptedLifter.WalkUp(gym, "2026-11-23T18:00", Fast, arguments: ["--with", "bram"]))
        {
            await both.Sees("TWO ON ONE BAR");
            both.Press("KPEnter");
            await both.Sees("all of them are");
            both.Press("KP+");
            await both.Sees(" BRAM ");
            both.Press("KP+");
            await both.TrainUntil("LIFT  LIFTER: BARBELL BACK SQUAT  working set 3 of 5");
            await both.Lift();
            both.Press("KP3", "KPEnter");
            await both.Sees("set 3 written: 20 kg x 3");
            both.Screen.Kill9();
            await both.Screen.WaitForEnd();
        }

        var killed = gym.Peek();
        killed.Should().HaveCount(2).And.OnlyContain(s => !s.Closed && s.SharedWith != null);
        killed.SelectMany(s => s.Sets).Where(s => s.Set.Kind == SetKind.Working).Should().ContainSingle(s => s.Set.Done == 3);

        using (var again = ScriptedLifter.WalkUp(gym, gym.After(Duration.FromMinutes(10)), Fast))
        {
            await again.Sees("The bar is shared with Bram Okafor-Lind");
            again.Press("KPEnter");
            await again.Sees("working set");
            again.Press("KP/", "KP*");
            await again.Sees("Bram leaves the bar");
            again.Press("KP4");
            await again.Sees("> back squat");
            await again.TrainUntil("working set 5 of 5");
            again.Press("KP/", "KP8");
            await again.Sees("All is written.");
            again.Press("KPEnter");
            (await again.Screen.WaitForEnd()).Should().Be(0);
        }

        var (first, bram) = (gym.Sessions()[0], gym.Sessions()[1]);
        first.Sets.Count(s => s.Set is { Slot: "squat", Kind: SetKind.Working }).Should().Be(4);
        bram.Sets.Should().HaveCount(killed[1].Sets.Count, "who has left writes nothing more");
        bram.SharedWith.Should().BeNull();
        bram.Closed.Should().BeFalse();
    }

    /// <summary>A gym as the set-up leaves it, and a second lifter who reads pounds.</summary>
    private static async Task Household(GymFolder gym)
    {
        using (var first = ScriptedLifter.WalkUp(gym, "2026-11-23T17:00", speed: 20))
        {
            await first.SetUp();
            await first.Sees("ENTER begin");
            first.Press("KP/");
            await first.Screen.WaitForEnd();
        }

        using var logbook = LiteLogbook.Open(gym.Path, Instant.FromUtc(2026, 11, 23, 17, 55));
        logbook.Keep(new Lifter("bram", "Bram Okafor-Lind", MassUnit.Pound, Instant.FromUtc(2026, 11, 23, 17, 55)));
    }
}
