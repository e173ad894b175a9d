using RackSide.EndToEnd.Driving;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.EndToEnd.Sessions;

/// <summary>The tasks of a session line by line, with a pipe at both ends and no terminal anywhere.</summary>
public sealed class PlainTests
{
    // Standard S26 of docs/screen.md.
    [Fact]
    public async Task The_tasks_of_a_session_are_done_through_a_pipe_and_no_code_is_sent()
    {
        using var gym = new GymFolder();
        using var plain = Begin(gym, "2026-11-23T18:00", 20);
        for (var page = 1; page <= 9; page++)
        {
            await plain.Hears($"page {page} of 9");
            await plain.Hears("keys:");
            plain.Type("");
        }

        await plain.Hears("ENTER begin");
        plain.Type("");
        await plain.Hears("all of them are");
        plain.Type("+");
        await plain.Hears("finding the load");
        await plain.Hears("keys:");
        plain.Type("mad");
        await plain.Hears("not understood");
        await Done(plain, "5", "HOW MANY LEFT?");
        plain.Type("4");
        await plain.Hears("REST");
        plain.Type("+");
        plain.Type("0");
        await plain.Hears("HELD");
        plain.Type("0");
        plain.Type("");
        await plain.Hears("working set 1 of 5");
        await plain.Hears("keys:");

        await Done(plain, "3", "set 1 written: 20 kg x 3");
        await plain.Hears("next time the same again");
        plain.Type("undo");
        await plain.Hears("taken back");
        plain.Type("*+");
        await plain.Hears("22.5 kg x 5");
        await plain.Hears("keys:");
        await Done(plain, "", "set 1 written: 22.5 kg x 5");
        await plain.Hears("keys:");
        plain.Type("/53");
        await plain.Hears("done, leave");
        plain.Type("");

        (await plain.End()).Should().Be(0);
        plain.Output.Should().NotContain("\e").And.Contain("week 48 of 2026");
        var session = gym.Sessions().Single();
        session.Closed.Should().BeTrue();
        session.Sets.Where(s => s.Set.Kind == SetKind.Working).Should().OnlyContain(s => s.Set.Load == Mass.Kg(22.5m));
        session.Facts.OfType<FactStruck>().Should().NotBeEmpty();
    }

    /// <summary>
    /// A set told at once is doubted, as on the screen; ENTER again settles it. Where that comes at once too it is taken for
    /// a key that bounces, nothing changes, and it is said once more.
    /// </summary>
    private static async Task Done(Piped plain, string reps, string then)
    {
        plain.Type(reps);
        for (var doubted = await plain.Hears("ENTER again writes", then); doubted; doubted = await plain.Hears("nothing changed", then))
        {
            plain.Type("");
        }
    }

    private static Piped Begin(GymFolder gym, string clock, int speed) => Piped.Start(
        [.. ProgramUnderTest.RackSide, "--plain", "--data", gym.Path],
        new Dictionary<string, string> { ["RACKSIDE_CLOCK"] = clock, ["RACKSIDE_SPEED"] = $"{speed}", ["TZ"] = "Europe/London" });
}
