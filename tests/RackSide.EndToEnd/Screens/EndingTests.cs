using RackSide.EndToEnd.Driving;

namespace RackSide.EndToEnd.Screens;

/// <summary>Whatever ends a screen, the terminal is as it was and the program says how it ended.</summary>
public sealed class EndingTests
{
    // Second screen off, mouse off, keypad and cursor keys normal.
    private const string Restored = "0000 ";

    [Theory]
    [InlineData("q", "ended: Finished", 0)]
    [InlineData("C-c", "ended: Interrupted", 130)]
    [InlineData("x", "ended: Failed thrown by a key", 70)]
    [InlineData("t", "ended: Failed thrown by a tick", 70)]
    [InlineData("o", "crashed: thrown elsewhere", 70)]
    public async Task A_key_ends_it(string key, string says, int code)
    {
        using var tmux = await Probe.Start();

        tmux.Press(key);

        (await tmux.WaitForEnd()).Should().Be(code);
        tmux.Capture().Should().Contain(says).And.NotContain("PROBE").And.NotContain("   at ");
        tmux.Modes.Should().StartWith(Restored);
    }

    // Standard S24 of docs/screen.md.
    [Theory]
    [InlineData("TERM", "ended: Terminated", 0)]
    [InlineData("INT", "ended: Interrupted", 130)]
    [InlineData("QUIT", "ended: Terminated", 0)]
    public async Task A_signal_ends_it(string signal, string says, int code)
    {
        using var tmux = await Probe.Start();

        tmux.Signal(signal);

        (await tmux.WaitForEnd()).Should().Be(code);
        tmux.Capture().Should().Contain(says).And.NotContain("PROBE");
        tmux.Modes.Should().StartWith(Restored);
    }

    [Fact]
    public async Task Losing_the_terminal_closes_what_must_be_closed_and_ends_it()
    {
        var closed = Path.GetTempFileName();
        try
        {
            using var tmux = await Probe.Start(null, "--hangup", closed);

            tmux.Signal("HUP");

            (await tmux.WaitForEnd(TimeSpan.FromSeconds(5))).Should().Be(129);
            File.ReadAllText(closed).Should().Be("closed\n");
        }
        finally
        {
            File.Delete(closed);
        }
    }

    [Fact]
    public async Task A_terminal_that_vanishes_takes_the_program_with_it()
    {
        var tmux = await Probe.Start();
        var process = System.Diagnostics.Process.GetProcessById(tmux.ProcessId);

        tmux.Dispose();

        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(5));
        await process.WaitForExitAsync(limit.Token);
    }

    // Standard S24 of docs/screen.md.
    [Theory]
    [InlineData("tmux-256color")]
    [InlineData("linux")]
    public async Task After_the_end_the_shell_reads_lines_again_and_echoes_them(string terminal)
    {
        var script = "\"$@\"; echo code $?; stty -a | grep -oE -- '-?(icanon|echo|isig|icrnl)\\b' | sort | tr '\\n' ' '; cat";
        using var tmux = Tmux.Start(["sh", "-c", script, "sh", .. ProgramUnderTest.Probe], new TerminalSetting { Type = terminal });
        await tmux.WaitFor("count down");

        tmux.Press("x");

        await tmux.WaitFor("code 70\necho icanon icrnl isig");
        tmux.Modes.Should().Be(Restored + "cursor 1");
    }

    [Fact]
    public async Task On_the_linux_console_no_page_is_left_behind()
    {
        using var tmux = await Probe.Start(new TerminalSetting { Type = "linux", KeepBytes = true });

        tmux.Press("q");

        await tmux.WaitForSent("ended: Finished");
        var sent = System.Text.Encoding.UTF8.GetString(tmux.Sent());
        sent[sent.LastIndexOf("count down", StringComparison.Ordinal)..].Should().Contain("\e[H\e[2J");
    }

    [Fact]
    public async Task A_dumb_terminal_is_refused_and_sent_no_codes()
    {
        using var tmux = Tmux.Start(ProgramUnderTest.Probe, new TerminalSetting { Type = "dumb", KeepBytes = true });

        (await tmux.WaitForEnd()).Should().Be(64);
        await tmux.WaitForSent("ended: DumbTerminal");
        System.Text.Encoding.UTF8.GetString(tmux.Sent()).Should().NotContain("\e");
    }

    // Standard S23 of docs/screen.md.
    [Fact]
    public void Without_a_terminal_it_is_refused_and_sends_no_codes()
    {
        var probe = ProgramUnderTest.Probe;

        var says = Tool.Run(probe[0], probe[1..], mayFail: true);

        says.Should().Be("ended: NoTerminal\n");
    }
}
