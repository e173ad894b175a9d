using System.Text;
using System.Text.RegularExpressions;
using RackSide.EndToEnd.Driving;

namespace RackSide.EndToEnd.Screens;

/// <summary>What a real terminal shows and is sent while a screen is up.</summary>
public sealed partial class ShowingTests
{
    // Standard S4 of docs/screen.md.
    [Theory]
    [InlineData("tmux-256color")]
    [InlineData("xterm-256color")]
    [InlineData("linux")]
    public async Task Every_key_of_the_pad_arrives_once_as_what_is_printed_on_it(string terminal)
    {
        using var tmux = await Probe.Start(new TerminalSetting { Type = terminal });

        tmux.Press("KP0", "KP1", "KP2", "KP3", "KP4", "KP5");
        await tmux.WaitFor("keys 6\nlast 0 1 2 3 4 5\n");
        tmux.Press("KP6", "KP7", "KP8", "KP9", "KP.", "KP+");
        await tmux.WaitFor("keys 12\nlast 6 7 8 9 . +\n");
        tmux.Press("KP-", "KP*", "KP/", "KPEnter", "Enter", "BSpace");
        await tmux.WaitFor("keys 18\nlast - * / Enter Enter Backspace\n");
    }

    [Theory]
    [InlineData("tmux-256color")]
    [InlineData("linux")]
    public async Task Keys_without_a_character_arrive_and_Esc_does_not_end_it(string terminal)
    {
        using var tmux = await Probe.Start(new TerminalSetting { Type = terminal });

        tmux.Press("Up", "Down", "Left", "Right", "Home", "End");
        await tmux.WaitFor("last Up Down Left Right Home End\n");
        tmux.Press("PPage", "NPage", "IC", "DC", "Tab");
        await tmux.WaitFor("last End PageUp PageDown Insert Delete Tab\n");
        tmux.Press("Escape");
        await tmux.WaitFor("keys 12\nlast PageUp PageDown Insert Delete Tab Escape\n");
    }

    // Standard S17 of docs/screen.md.
    [Fact]
    public async Task The_page_follows_the_window_and_the_real_cursor_stands_where_the_page_says()
    {
        using var tmux = await Probe.Start();
        await tmux.WaitFor(_ => tmux.Cursor == (5, 3), "the cursor where the page says");

        foreach (var (columns, rows) in new[] { (120, 40), (50, 15), (30, 8), (80, 24) })
        {
            tmux.Resize(columns, rows);
            await tmux.WaitFor(screen => screen.Contains($"{columns}x{rows}") && Probe.Shown(screen) | columns < 50, $"a page of {columns}x{rows}");
        }

        await tmux.WaitFor(Probe.Shown, "the whole page");
        await tmux.WaitFor(_ => tmux.Cursor == (5, 3), "the cursor where the page says");
    }

    [Theory]
    [InlineData("tmux-256color")]
    [InlineData("linux")]
    public async Task After_a_stop_the_page_is_back_and_keys_arrive_once(string terminal)
    {
        var shell = new TerminalSetting { Type = terminal, Environment = new Dictionary<string, string> { ["PS1"] = "> " } };
        using var tmux = Tmux.Start(["bash", "--norc", "--noprofile", "-i"], shell);
        await tmux.WaitFor(">");
        tmux.Press(string.Join(' ', ProgramUnderTest.Probe), "Enter");
        await tmux.WaitFor("count down");
        tmux.Press("7");
        await tmux.WaitFor("keys 1");

        tmux.Press("C-z");
        await tmux.WaitFor(screen => screen.Contains("topped") && screen.TrimEnd().EndsWith('>'), "the shell's next prompt");
        tmux.Press("fg", "Enter");
        await tmux.WaitFor("last 7");
        await tmux.WaitFor(Probe.Shown, "the whole page");
        tmux.Press("KP8", "KPEnter");

        await tmux.WaitFor("keys 3\nlast 7 8 Enter\n");
        tmux.Modes.Should().MatchRegex("[01]000 cursor 1");
        tmux.Press("q");
        await tmux.WaitFor("ended: Finished");
    }

    // Standard S10 of docs/screen.md.
    [Fact]
    public async Task A_page_that_does_not_change_sends_nothing()
    {
        using var tmux = await Probe.Start(new TerminalSetting { KeepBytes = true });
        await Settled(tmux);
        var before = tmux.Sent().Length;

        // Time is the subject here: a screen that is left alone must stay silent while it passes.
        await Task.Delay(TimeSpan.FromSeconds(2));

        (tmux.Sent().Length - before).Should().Be(0);
    }

    // Standard S11 of our screens: 600 bytes a tick or less. This countdown is one line; a giant one sends more cells, not
    // more of anything else.
    [Fact]
    public async Task A_countdown_sends_only_its_digits()
    {
        using var tmux = await Probe.Start(new TerminalSetting { KeepBytes = true });
        await Settled(tmux);
        tmux.Press("c");
        await tmux.WaitFor("left 600 s");
        await tmux.WaitFor("left 599 s");
        var before = tmux.Sent().Length;

        await tmux.WaitFor("left 597 s");

        (tmux.Sent().Length - before).Should().BeInRange(2 * 20, 2 * 60);
    }

    // Standard S19 of docs/screen.md.
    [Theory]
    [InlineData("tmux-256color")]
    [InlineData("linux")]
    public async Task NO_COLOR_keeps_every_colour_code_out_of_the_stream(string terminal)
    {
        var setting = new TerminalSetting { Type = terminal, KeepBytes = true, Environment = new Dictionary<string, string> { ["NO_COLOR"] = "1" } };
        using var tmux = await Probe.Start(setting);
        await AndBack(tmux);

        Inks(tmux).Should().NotBeEmpty().And.OnlyContain(ink => ink.All(code => code == "0" || code == "1" || code == "7"));
        ColourQuestions(tmux).Should().BeEmpty();
    }

    [Fact]
    public async Task The_flag_does_what_the_variable_does()
    {
        using var tmux = await Probe.Start(new TerminalSetting { KeepBytes = true }, "--no-color");
        await AndBack(tmux);

        Inks(tmux).SelectMany(ink => ink).Distinct().Order().Should().Equal("0", "1", "7");
        ColourQuestions(tmux).Should().BeEmpty();
    }

    [Fact]
    public async Task In_colour_only_the_two_hues_are_named_and_no_background_ever()
    {
        using var tmux = await Probe.Start(new TerminalSetting { KeepBytes = true });
        await AndBack(tmux);

        Inks(tmux).SelectMany(ink => ink).Distinct().Order().Should().Equal("0", "1", "7", "93", "96");
    }

    [Fact]
    public async Task The_bell_rings_unless_it_is_silenced()
    {
        using var heard = await Probe.Start(new TerminalSetting { KeepBytes = true });
        using var silent = await Probe.Start(new TerminalSetting { KeepBytes = true }, "--silent");
        foreach (var tmux in new[] { heard, silent })
        {
            tmux.Press("b", "B");
            await tmux.WaitFor("keys 2");
            tmux.Press("w");
            await tmux.WaitFor("woken yes");
            tmux.Press("q");
            await tmux.WaitForSent("ended: ");
        }

        Bells(heard).Should().BeInRange(2, 3, "the second of two comes later, and the page may be left before");
        Bells(silent).Should().Be(0);
    }

    private static int Bells(Tmux tmux) => TitleCode().Replace(Text(tmux), "").Count(character => character == '\a');

    private static async Task AndBack(Tmux tmux)
    {
        tmux.Press("5", "c");
        await tmux.WaitFor("left 5");
        tmux.Press("q");
        await tmux.WaitForSent("ended: ");
    }

    // The library's last question to the terminal, for its background, goes out about a second after the start.
    private static Task Settled(Tmux tmux) => tmux.WaitForSent("\e]11;?");

    // What a terminal is told of colour and weight: SGR, ECMA-48 8.3.117.
    private static List<string[]> Inks(Tmux tmux) =>
        [.. InkCode().Matches(Text(tmux)).Select(match => match.Groups[1].Value.Split(';'))];

    private static IEnumerable<string> ColourQuestions(Tmux tmux) => ColourCode().Matches(Text(tmux)).Select(match => match.Value);

    private static string Text(Tmux tmux) => Encoding.UTF8.GetString(tmux.Sent());

    [GeneratedRegex("\u001b\\[([0-9;:]*)m")]
    private static partial Regex InkCode();

    [GeneratedRegex("\u001b\\](4|1[0-9]);[^\u001b\u0007]*")]
    private static partial Regex ColourCode();

    [GeneratedRegex("\u001b\\][^\u001b\u0007]*\u0007")]
    private static partial Regex TitleCode();
}
