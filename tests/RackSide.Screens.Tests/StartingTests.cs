using NodaTime.Testing;
using RackSide.Screens.Waiting;

namespace RackSide.Screens.Tests;

public sealed class StartingTests
{
    [Theory]
    [InlineData("xterm-256color", true, null)]
    [InlineData("linux", true, null)]
    [InlineData(null, true, null)]
    [InlineData("dumb", true, ScreenEnd.DumbTerminal)]
    [InlineData("xterm-256color", false, ScreenEnd.NoTerminal)]
    [InlineData("dumb", false, ScreenEnd.NoTerminal)]
    public void A_screen_is_refused_where_it_cannot_be_shown(string? terminal, bool attached, ScreenEnd? refusal) =>
        TerminalCheck.Refusal(new ScreenOptions { Terminal = terminal }, attached).Should().Be(refusal);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_library_still_has_the_constructor_that_takes_readers_of_ours(bool linuxConsole)
    {
        using var stir = new Stir();

        using var app = WaitingApplication.Create(linuxConsole, stir);
        app.Init();

        app.Driver.Should().NotBeNull();
    }

    [Fact]
    public void Without_a_terminal_nothing_is_drawn_and_the_exit_code_is_that_of_a_bad_call()
    {
        var conversation = new Scripted();
        var clock = new FakeClock(NodaTime.Instant.FromUtc(2026, 11, 25, 18, 0));

        var outcome = ScreenHost.Run(conversation, clock, new ScreenOptions { Terminal = "xterm" });

        outcome.Should().Be(new ScreenOutcome(ScreenEnd.NoTerminal));
        outcome.ExitCode.Should().Be(64);
        conversation.Wake.Should().BeNull();
    }

    // no-color.org: "when present and not an empty string (regardless of its value)".
    [Theory]
    [InlineData(null, false, true)]
    [InlineData("", false, true)]
    [InlineData("1", false, false)]
    [InlineData("0", false, false)]
    [InlineData(null, true, false)]
    public void Colour_is_used_unless_the_environment_or_the_command_line_forbids_it(string? noColour, bool flag, bool colour)
    {
        var options = ScreenOptions.From(name => name == "NO_COLOR" ? noColour : null, flag);

        options.Colour.Should().Be(colour);
    }

    [Theory]
    [InlineData(ScreenEnd.Finished, 0)]
    [InlineData(ScreenEnd.Terminated, 0)]
    [InlineData(ScreenEnd.Interrupted, 130)]
    [InlineData(ScreenEnd.NoTerminal, 64)]
    [InlineData(ScreenEnd.DumbTerminal, 64)]
    [InlineData(ScreenEnd.Failed, 70)]
    public void Each_end_has_its_exit_code(ScreenEnd end, int code) => new ScreenOutcome(end).ExitCode.Should().Be(code);

    [Fact]
    public void The_first_reason_to_end_stays()
    {
        var nudges = new Nudges();
        nudges.Stopping.Should().BeNull();

        nudges.Stop(ScreenEnd.Terminated);
        nudges.Stop(ScreenEnd.Interrupted);

        nudges.Stopping.Should().Be(ScreenEnd.Terminated);
    }
}
