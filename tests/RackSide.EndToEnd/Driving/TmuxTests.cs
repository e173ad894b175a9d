namespace RackSide.EndToEnd.Driving;

/// <summary>The driver itself, on programs every system has.</summary>
public sealed class TmuxTests
{
    private static readonly string[] Echo = ["cat", "-v"];

    [Fact]
    public async Task Keys_are_typed_and_the_screen_is_read()
    {
        using var tmux = Tmux.Start(Echo);

        tmux.Press("6", "2", ".", "5", "Space", "k", "g");

        (await tmux.WaitFor("62.5 kg")).Should().StartWith("62.5 kg\n");
        tmux.Cursor.Should().Be((7, 0));
    }

    [Fact]
    public async Task Keypad_keys_are_characters_in_numeric_mode()
    {
        using var tmux = Tmux.Start(Echo);

        tmux.Press("KP0", "KP5", "KP.", "KP+", "KP-", "KP*", "KP/", "KPEnter");

        // Typed, and after the pad's Enter said again by cat.
        await tmux.WaitFor("05.+-*/\n05.+-*/\n");
    }

    [Fact]
    public async Task Keypad_keys_are_codes_in_application_mode()
    {
        using var tmux = Tmux.Start(["sh", "-c", "printf 'ready\\033='; exec cat -v"]);
        await tmux.WaitFor("ready");

        tmux.Press("KP0", "KP+", "KPEnter");

        await tmux.WaitFor("^[Op^[Ok^[OM");
    }

    [Fact]
    public async Task The_terminal_has_the_size_and_the_variables_asked_for()
    {
        var setting = new TerminalSetting
        {
            Columns = 50,
            Rows = 15,
            Type = "linux",
            Environment = new Dictionary<string, string> { ["RACK"] = "left one" },
        };
        using var tmux = Tmux.Start(["sh", "-c", "stty size; echo $TERM, $RACK; cat"], setting);

        (await tmux.WaitFor("left one")).Should().StartWith("15 50\nlinux, left one\n");

        tmux.Resize(120, 40);
        await tmux.WaitFor(screen => screen.Count(character => character == '\n') == 40, "40 rows");
    }

    [Theory]
    [InlineData("exit 0", 0)]
    [InlineData("exit 64", 64)]
    public async Task The_exit_code_is_known_after_the_end(string script, int code)
    {
        using var tmux = Tmux.Start(["sh", "-c", script]);

        (await tmux.WaitForEnd()).Should().Be(code);
    }

    [Fact]
    public async Task A_killed_program_has_no_exit_code()
    {
        using var tmux = Tmux.Start(Echo);
        tmux.Ended.Should().BeFalse();

        tmux.Kill9();

        (await tmux.WaitForEnd()).Should().BeNull();
    }

    [Fact]
    public async Task Waiting_for_what_never_comes_says_what_came_instead()
    {
        using var tmux = Tmux.Start(["sh", "-c", "echo something else; cat"]);
        await tmux.WaitFor("something else");

        var wait = () => tmux.WaitFor("REST", TimeSpan.FromMilliseconds(100));

        await wait.Should().ThrowAsync<TimeoutException>().WithMessage("*\"REST\"*something else*");
    }

    [Fact]
    public async Task Every_byte_sent_is_kept_from_the_first_on()
    {
        using var tmux = Tmux.Start(["sh", "-c", "printf 'a\\033[1mb'; exec cat"], new TerminalSetting { KeepBytes = true });
        await tmux.WaitForSent("mb");

        // The line end before it is the terminal's echo of the key that let the program go.
        System.Text.Encoding.ASCII.GetString(tmux.Sent()).TrimStart('\r', '\n').Should().Be("a\e[1mb");
    }
}
