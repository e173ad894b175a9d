using System.Text.RegularExpressions;
using RackSide.EndToEnd.Driving;

namespace RackSide.EndToEnd.Sessions;

/// <summary>
/// A worn key that bounces, and a key meant for the page before, on the real screen. The limits are real time (0.3 s and
/// 1.5 s), so the program runs three times faster only; a slow machine makes the keys come later, which writes nothing either.
/// </summary>
public sealed partial class HastyKeysTests
{
    // Of the standards of docs/screen.md S20 and the rules of error-proofing beside it.
    [Fact]
    public async Task A_key_that_bounces_counts_once_and_one_meant_for_the_rest_writes_no_set()
    {
        var variables = new Dictionary<string, string> { ["RACKSIDE_CLOCK"] = "2026-11-25T18:00", ["RACKSIDE_SPEED"] = "3", ["TZ"] = "UTC" };
        using var screen = Tmux.Start([.. ProgramUnderTest.RackSide, "--demo"], new TerminalSetting { Environment = variables });
        await screen.WaitFor("ENTER begin");
        screen.Press("KPEnter");
        await screen.WaitFor("all of them");
        screen.Press("KP+");
        await screen.WaitFor("warm-up 1 of 4");

        // Too quick after the page came, so it asks; the bounce must not be the answer.
        screen.Press("KPEnter", "KPEnter");
        await screen.WaitFor("ENTER again");
        await Task.Delay(300);
        screen.Capture().Should().Contain("ENTER again").And.Contain("warm-up 1 of 4");

        await WarmUp(screen);
        var rest = screen.Capture();
        rest.Should().Contain("warm-up 4 written").And.Contain("undo: warm-up set 4");
        screen.Press([.. Enumerable.Repeat("KP-", 7)]);
        await screen.WaitFor(" LIFT ");
        screen.Press("KPEnter");

        // Seconds later nothing has come of it, whether the key was dead or was asked about.
        var lift = await screen.WaitFor(s => AfterFive().IsMatch(s) || s.Contains(" REST ") || s.Contains("working set 2"), "five seconds after the rest");
        lift.Should().Contain(" LIFT ").And.Contain("working set 1 of 5").And.Contain("undo: warm-up set 4");
    }

    private static async Task WarmUp(Tmux screen)
    {
        for (var set = 1; set <= 4; set++)
        {
            await screen.WaitFor($"warm-up {set} of 4");
            for (var shown = screen.Capture(); shown.Contains($"warm-up {set} of 4", StringComparison.Ordinal); shown = screen.Capture())
            {
                screen.Press("KPEnter");
                await Task.Delay(250);
            }
        }

        await screen.WaitFor(" REST ");
    }

    [GeneratedRegex(@"\+0:(0[5-9]|[1-5]\d)")]
    private static partial Regex AfterFive();
}
