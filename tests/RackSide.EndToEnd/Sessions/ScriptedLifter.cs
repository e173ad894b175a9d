using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using RackSide.EndToEnd.Driving;

namespace RackSide.EndToEnd.Sessions;

/// <summary>
/// Somebody who trains from the numeric pad: looks at the screen, does what it says, and presses the one key. Time runs
/// faster by the documented test hook, so that two minutes of rest pass while this looks a few times; nothing here waits
/// for a length of time.
/// </summary>
internal sealed partial class ScriptedLifter : IDisposable
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(30);

    private const string Question = " HOW MANY LEFT? ";

    /// <summary>A set takes longer than the five seconds below which the program asks again, and than any dead time.</summary>
    private static readonly TimeSpan SetTakes = TimeSpan.FromSeconds(6);

    private readonly int speed;

    private ScriptedLifter(Tmux tmux, int speed) => (Screen, this.speed) = (tmux, speed);

    public Tmux Screen { get; }

    public int Keys { get; private set; }

    /// <summary>What is told of the next search sets, in order; after that ENTER alone, which stays at the load.</summary>
    public Queue<string> GoodRepsLeft { get; } = new();

    /// <summary>Walks up to the rack at a local time, with time running this many times faster.</summary>
    public static ScriptedLifter WalkUp(GymFolder gym, string clock, int speed, int columns = 80, int rows = 24, string terminal = "tmux-256color", params string[] arguments) =>
        WalkUp(gym, clock, speed, new TerminalSetting { Columns = columns, Rows = rows, Type = terminal }, arguments);

    /// <summary>The same in any terminal, with the variables it brings.</summary>
    public static ScriptedLifter WalkUp(GymFolder gym, string clock, int speed, TerminalSetting terminal, params string[] arguments)
    {
        var setting = terminal with
        {
            Environment = new Dictionary<string, string>(terminal.Environment)
            {
                ["RACKSIDE_CLOCK"] = clock,
                ["RACKSIDE_SPEED"] = speed.ToString(CultureInfo.InvariantCulture),
                ["TZ"] = "Europe/London",
            },
        };
        return new ScriptedLifter(Tmux.Start([.. ProgramUnderTest.RackSide, "--data", gym.Path, .. arguments], setting), speed);
    }

    /// <summary>The same where another program starts it: words that end with what they start.</summary>
    public static ScriptedLifter WalkUp(string[] starter, string folder, string clock, int speed, IReadOnlyDictionary<string, string> variables)
    {
        var setting = new TerminalSetting
        {
            Environment = new Dictionary<string, string>(variables)
            {
                ["RACKSIDE_CLOCK"] = clock,
                ["RACKSIDE_SPEED"] = speed.ToString(CultureInfo.InvariantCulture),
                ["TZ"] = "Europe/London",
            },
        };
        return new ScriptedLifter(Tmux.Start([.. starter, .. ProgramUnderTest.RackSide, "--data", folder], setting), speed);
    }

    public async Task<string> Sees(string text) => await Screen.WaitFor(text, Limit);

    /// <summary>Presses keys of the pad.</summary>
    public void Press(params string[] keys)
    {
        Keys += keys.Length;
        Screen.Press(keys);
    }

    /// <summary>Answers the set-up with ENTER all the way.</summary>
    public async Task SetUp()
    {
        for (var page = 1; page <= 9; page++)
        {
            await Sees($"page {page} of 9");
            Press("KPEnter");
        }

        Keys = 0;
    }

    /// <summary>Confirms what stands before the first set.</summary>
    public async Task Begin()
    {
        await Sees("ENTER begin");
        Press("KPEnter");
        await Sees("all of them are");
        Press("KP+");
        await Screen.WaitFor(screen => !screen.Contains("all of them are", StringComparison.Ordinal), "the first set", Limit);
    }

    /// <summary>
    /// Takes the time that a set takes on the program's clock, or an answer to a question after it: the screen answers at
    /// once, and a second ENTER that soon would be a bounce.
    /// </summary>
    public async Task Lift()
    {
        var begun = Stopwatch.StartNew();
        await Screen.WaitFor(_ => begun.Elapsed * speed > SetTakes, "the time of a set", Limit);
    }

    /// <summary>A hold that was started too soon and is taken back while the seconds count down to it, and then begun again.</summary>
    public async Task HoldAfterAFalseStart()
    {
        await Sees("READY");
        await Lift();
        Press("KPEnter");
        await Sees("GET SET");
        Press("KP0");
        await Sees("READY");
        await Lift();
        Press("KPEnter");
    }

    /// <summary>Does what the screen asks until it asks for something this text is in.</summary>
    public async Task TrainUntil(string text)
    {
        for (var screen = await Settled(""); !screen.Contains(text, StringComparison.Ordinal);)
        {
            screen = await Obey(screen);
        }
    }

    /// <summary>Ends the program first, so that nothing writes to a folder that the test then deletes.</summary>
    public void Dispose()
    {
        if (!Screen.Ended)
        {
            Screen.Kill9();
            Screen.WaitForEnd().GetAwaiter().GetResult();
        }

        Screen.Dispose();
    }

    private async Task<string> Obey(string screen)
    {
        if (!Waits(screen))
        {
            await (new[] { " LIFT ", Question }.Any(word => screen.Contains(word, StringComparison.Ordinal)) ? Lift() : Task.CompletedTask);
            var answer = screen.Contains(Question, StringComparison.Ordinal) && GoodRepsLeft.TryDequeue(out var told) ? told : "";
            Press([.. answer.Select(digit => $"KP{digit}"), "KPEnter"]);
        }

        return await Settled(State(screen));
    }

    /// <summary>Whether only time moves things on: a clock runs down, or a hold has not met its target.</summary>
    private static bool Waits(string screen) =>
        new[] { " REST ", " CHANGE OVER ", "GET SET", "GET READY" }.Any(word => screen.Contains(word, StringComparison.Ordinal))
        || (screen.Contains("down: write", StringComparison.Ordinal) && !screen.Contains("TARGET MET", StringComparison.Ordinal));

    /// <summary>
    /// Waits until the screen asks for something else than before, in two looks running: a look may fall into the painting
    /// of a page, and what half a page seems to ask for would be answered with a key too many.
    /// </summary>
    private Task<string> Settled(string before)
    {
        var last = before;
        return Screen.WaitFor(
            screen =>
            {
                var (state, seen) = (State(screen), last);
                last = state;
                return state.Length > 0 && state != before && state == seen;
            },
            $"something other than {before}",
            Limit);
    }

    /// <summary>What distinguishes one thing to do from the next: the state word, which set, of what and on a shared bar whose.</summary>
    private static string State(string screen) => string.Join('|', new[] { " LIFT ", Question, " REST ", " CHANGE OVER ", "READY", "GET SET", "down: write", "TARGET MET", "done, leave", "ENTER again", "just turned" }
        .Where(word => screen.Contains(word, StringComparison.Ordinal)))
        + Whose(screen) + Which(screen);

    /// <summary>
    /// Two halves of a pair may be in the same round, and two lifters in the same set, and what lies between them may be over
    /// before anybody looks; so what the page is headed with and what is to be lifted tell them apart. A clock is in neither.
    /// </summary>
    private static string Whose(string screen) => Found(screen, HeadAndLift());

    private static string Found(string screen, Regex what) => string.Join('/', what.Matches(screen).Select(found => found.Value.Trim()));

    /// <summary>Only what names a set, so that no other line is taken for something new to do.</summary>
    private static string Which(string screen) => Found(screen, Sets());

    [GeneratedRegex(@"\A.*?\S(?=  |\n|\z)|LIFT  \S.*?(?=  |\n|\z)")]
    private static partial Regex HeadAndLift();

    [GeneratedRegex(@"(set|warm-up|round|hold) \d+ (of \d+|written: .*)|\[ \] > .*|\d+ of \d+ done")]
    private static partial Regex Sets();
}
