using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace RackSide.EndToEnd.Driving;

/// <summary>
/// A program in a terminal that a test can press keys in and look at: a tmux server of its own, with one pane.
/// </summary>
/// <remarks>
/// Keys have tmux's names: <c>Enter</c>, <c>Escape</c>, <c>BSpace</c>, <c>Up</c>, <c>C-c</c>, <c>KP0</c> to <c>KP9</c>,
/// <c>KPEnter</c>, <c>KP+</c>, <c>KP-</c>, <c>KP*</c>, <c>KP/</c>, <c>KP.</c>; anything else is typed as it stands. What tmux
/// 3.3a sends for the keypad names depends on the mode the program has set: in numeric mode (where a screen belongs) the
/// characters themselves, and for <c>KPEnter</c> the same as for <c>Enter</c>; in application mode <c>ESC O p</c> to
/// <c>ESC O y</c> for digits and <c>ESC O M n k m j o</c> for Enter . + - * /.
/// </remarks>
internal sealed class Tmux : IDisposable
{
    private const string HoldBack = "read -r _; exec \"$@\"";
    private static readonly TimeSpan Usual = TimeSpan.FromSeconds(30);
    private readonly string socket = $"rackside-{Guid.NewGuid():N}";
    private readonly string bytes;

    private Tmux(TerminalSetting setting)
    {
        Setting = setting;
        bytes = Path.Combine(Path.GetTempPath(), socket + ".bytes");
    }

    /// <summary>What it was started with.</summary>
    public TerminalSetting Setting { get; }

    /// <summary>Starts a program, given as its name and arguments, without a shell between.</summary>
    public static Tmux Start(string[] command, TerminalSetting? setting = null)
    {
        var tmux = new Tmux(setting ?? new TerminalSetting());
        try
        {
            tmux.Open(command);
            return tmux;
        }
        catch
        {
            tmux.Dispose();
            throw;
        }
    }

    /// <summary>Presses keys one after the other.</summary>
    public void Press(params string[] keys) => Ask(["send-keys", "--", .. keys]);

    /// <summary>
    /// What the terminal shows, a line a row, without trailing blanks; after the program's end with what scrolled away,
    /// because tmux then scrolls by a line to say so.
    /// </summary>
    public string Capture()
    {
        // One call for both, because looks are what these tests spend most of the processor on.
        var seen = Ask("display-message", "-p", "#{pane_dead}", ";", "capture-pane", "-p");
        var screen = seen[(seen.IndexOf('\n', StringComparison.Ordinal) + 1)..];
        return seen.StartsWith('1') ? Ask("capture-pane", "-p", "-S", "-") : screen;
    }

    /// <summary>Gives the terminal another size.</summary>
    public void Resize(int columns, int rows) => Ask("resize-window", "-x", Text(columns), "-y", Text(rows));

    /// <summary>The process in the pane.</summary>
    public int ProcessId => Number("pane_pid");

    /// <summary>Whether the program has ended, and how is known.</summary>
    /// <remarks>
    /// tmux 3.3a sees the terminal close first and now and then misses the signal that tells of the process (it stays a
    /// zombie). Any other child that ends makes it look again, so one is run.
    /// </remarks>
    public bool Ended
    {
        get
        {
            var state = Format("pane_dead} #{pane_dead_status}#{pane_dead_signal");
            if (state == "1")
            {
                Ask("run-shell", "true");
            }

            return state.Length > 1 && state[0] == '1';
        }
    }

    /// <summary>Its exit code, once it has ended by itself; null before that or where a signal ended it.</summary>
    public int? ExitCode => Format("pane_dead_status") is { Length: > 0 } code ? int.Parse(code, CultureInfo.InvariantCulture) : null;

    /// <summary>Where the cursor stands, counted from 0.</summary>
    public (int Column, int Row) Cursor => (Number("cursor_x"), Number("cursor_y"));

    /// <summary>The modes a program may leave behind: second screen, mouse, keypad, cursor keys; each 0 or 1; and the cursor.</summary>
    public string Modes =>
        Format("alternate_on}#{mouse_any_flag}#{keypad_flag}#{keypad_cursor_flag} cursor #{cursor_flag");

    /// <summary>The device of the terminal.</summary>
    public string Device => Format("pane_tty");

    /// <summary>Every byte sent so far, but for those still under way (see <see cref="WaitForSent"/>); only with <see cref="TerminalSetting.KeepBytes"/>.</summary>
    public byte[] Sent()
    {
        using var file = new FileStream(bytes, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var copy = new MemoryStream();
        file.CopyTo(copy);
        return copy.ToArray();
    }

    /// <summary>Waits until the terminal shows a text.</summary>
    /// <returns>What it showed then.</returns>
    /// <exception cref="TimeoutException">It did not in time; the message has the screen.</exception>
    public Task<string> WaitFor(string text, TimeSpan? limit = null) =>
        WaitFor(screen => screen.Contains(text, StringComparison.Ordinal), $"\"{text}\"", limit);

    /// <summary>Waits until what the terminal shows meets a condition.</summary>
    /// <returns>What it showed then.</returns>
    /// <exception cref="TimeoutException">It did not in time; the message has the screen.</exception>
    /// <remarks>
    /// Another process cannot be waited for but by looking, so this looks every 20 ms. It never waits longer than it must,
    /// and no test depends on how long that is.
    /// </remarks>
    public async Task<string> WaitFor(Func<string, bool> shows, string what, TimeSpan? limit = null)
    {
        var waited = Stopwatch.StartNew();
        for (var screen = Capture(); ; screen = Capture())
        {
            if (shows(screen))
            {
                return screen;
            }

            if (waited.Elapsed > (limit ?? Usual))
            {
                throw new TimeoutException($"Waited {waited.Elapsed.TotalSeconds:0.0} s for {what}; the terminal shows:\n{screen}");
            }

            await Task.Delay(20);
        }
    }

    /// <summary>Waits until the program has sent a text; only with <see cref="TerminalSetting.KeepBytes"/>.</summary>
    /// <exception cref="TimeoutException">It did not in time; the message has the screen.</exception>
    public Task WaitForSent(string text) =>
        WaitFor(_ => Encoding.UTF8.GetString(Sent()).Contains(text, StringComparison.Ordinal), $"{text} to be sent");

    /// <summary>Waits until the program has ended.</summary>
    /// <returns>Its exit code, or null where a signal ended it.</returns>
    /// <exception cref="TimeoutException">It did not in time.</exception>
    public async Task<int?> WaitForEnd(TimeSpan? limit = null)
    {
        await WaitFor(_ => Ended, "the program's end", limit);
        return ExitCode;
    }

    /// <summary>Sends the program a signal: <c>TERM</c>, <c>INT</c>, <c>HUP</c>, <c>KILL</c>.</summary>
    public void Signal(string name) => Tool.Run("kill", ["-s", name, Text(ProcessId)]);

    /// <summary>Ends the program as a power cut would: with no chance to do anything.</summary>
    public void Kill9() => Signal("KILL");

    /// <summary>Ends the server and with it the program.</summary>
    public void Dispose()
    {
        Tool.Run("tmux", ["-L", socket, "kill-server"], mayFail: true);
        File.Delete(bytes);
    }

    // A program whose bytes are kept is held back until the pipe stands, because tmux can only pipe what already runs.
    private void Open(string[] command)
    {
        string[] started = Setting.KeepBytes ? ["sh", "-c", HoldBack, "sh", .. command] : command;
        string[] variables = [.. Setting.Environment.SelectMany(variable => new[] { "-e", $"{variable.Key}={variable.Value}" })];
        Ask(["start-server", ";", "set-option", "-g", "remain-on-exit", "on", ";",
            "set-option", "-g", "default-terminal", Setting.Type, ";",
            "new-session", "-d", "-x", Text(Setting.Columns), "-y", Text(Setting.Rows), .. variables, "--", .. started]);
        if (Setting.KeepBytes)
        {
            Ask("pipe-pane", $"cat > '{bytes}'");
            Press("Enter");
        }
    }

    private int Number(string variable) => int.Parse(Format(variable), CultureInfo.InvariantCulture);

    private string Format(string variable) => Ask("display-message", "-p", $"#{{{variable}}}").Trim();

    private string Ask(params string[] request) => Tool.Run("tmux", ["-L", socket, "-f", "/dev/null", .. request]);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
