using System.Text;
using System.Text.RegularExpressions;
using RackSide.EndToEnd.Driving;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.EndToEnd.Sessions;

/// <summary>
/// What a lifter does at the rack, task by task with the most keys it may take, all from the numeric pad, in the terminals
/// and locales that racks have. Of the ten tasks of this project's screen standards a kill in mid rest (the ninth) is in
/// <see cref="StrengthDayKilledTests"/> and a skills day (the tenth) in <see cref="SkillsDayTests"/>.
/// </summary>
public sealed partial class TenTasksTests
{
    private const string Safe = "█░▒■─│┌┐└┘├┤┬┴┼·×";
    private const int Watchable = 20;

    // Standard S1 of docs/screen.md.
    [Theory]
    [InlineData(50, 15, "linux", "LANG=C NO_COLOR=1")]
    [InlineData(80, 24, "tmux-256color", "LANG=de_DE.UTF-8 LC_ALL=de_DE.UTF-8")]
    [InlineData(120, 40, "xterm-256color", "LANG=en_GB.UTF-8 NO_COLOR=1")]
    public async Task Each_task_takes_no_more_keys_than_it_may(int columns, int rows, string terminal, string variables)
    {
        using var gym = new GymFolder();
        var set = variables.Split(' ').Select(v => v.Split('=')).ToDictionary(v => v[0], v => v[1]);
        var setting = new TerminalSetting { Columns = columns, Rows = rows, Type = terminal, Environment = set, KeepBytes = true };
        using var lifter = ScriptedLifter.WalkUp(gym, "2026-11-23T18:00", Watchable, setting);
        await lifter.SetUp();

        await Does(lifter, "begin today's strength day", 3, ["KPEnter", "KP+"], "finding the load, set 1");
        await lifter.TrainUntil("working set 1 of 5");
        await lifter.Sees(" LIFT ");
        await lifter.Lift();
        await Does(lifter, "write a set as planned", 1, ["KPEnter"], "set 1 written: 20 kg x 5", "REST");
        await Does(lifter, "take it back", 1, ["KP."], "taken back", " LIFT ");
        await lifter.Lift();
        await Does(lifter, "only 3 of 5 reps", 3, ["KP3", "KPEnter"], "written: 20 kg x 3");
        await Does(lifter, "longer rest, hold the clock, go on, lift early", 5, ["KP+", "KP+", "KP0", "KP0", "KPEnter"], " LIFT ", "working set 2 of 5");
        await Does(lifter, "one step heavier, plates told before it is written", 3, ["KP*", "KP+"], "each side: 1.25");
        await lifter.Lift();
        await Does(lifter, "and then as shown", 1, ["KPEnter"], "written: 22.5 kg x 5");
        await Does(lifter, "the rack is taken: other exercise", 4, ["KP/", "KP2", "KP1"], "for today only");
        await Forward(lifter);
        await lifter.Lift();
        await Does(lifter, "11 reps", 3, ["KP1", "KP1", "KPEnter"], " x 11");
        await Forward(lifter);
        await lifter.Lift();

        await NoNumberIsReadWrong(lifter);
        await AnUnknownKeyChangesNothing(lifter);
        await AWindowThatShrinksKeepsWhatIsTyped(lifter, columns, rows);
        ASecondProgramIsRefused(gym);

        lifter.Press("KP/", "KP8");
        await lifter.Sees("All is written.");
        lifter.Press("KPEnter");
        (await lifter.Screen.WaitForEnd()).Should().Be(0);
        OnlyWhatWasDoneIsKept(gym);
        OnlySafeSignsWereSent(lifter.Screen, set);
    }

    [Fact]
    public async Task A_stop_by_the_system_in_mid_rest_keeps_the_session_says_so_and_gives_the_terminal_back()
    {
        using var gym = new GymFolder();
        using var lifter = ScriptedLifter.WalkUp(gym, "2026-11-23T18:00", Watchable);
        await lifter.SetUp();
        await lifter.Begin();
        await lifter.TrainUntil(" REST ");

        lifter.Screen.Signal("TERM");

        (await lifter.Screen.WaitForEnd()).Should().Be(0);
        lifter.Screen.Capture().Should().Contain("asked to stop by the system; the session stays open").And.Contain("week 48 of 2026");
        lifter.Screen.Modes.Should().StartWith("0000 ");
        gym.Sessions().Single().Closed.Should().BeFalse();
    }

    private static async Task Does(ScriptedLifter lifter, string task, int most, string[] keys, params string[] shown)
    {
        keys.Length.Should().BeLessThanOrEqualTo(most, task);
        foreach (var key in keys)
        {
            lifter.Press(key);
        }

        var screen = await lifter.Screen.WaitFor(s => s.Contains("ENTER again") || shown.All(s.Contains), task, TimeSpan.FromSeconds(30));
        if (screen.Contains("ENTER again"))
        {
            await lifter.Lift();
            lifter.Press("KPEnter");
            await lifter.Screen.WaitFor(s => shown.All(s.Contains), task, TimeSpan.FromSeconds(30));
        }
    }

    /// <summary>On to the next set of the slot, by lifting early where a rest runs.</summary>
    private static async Task Forward(ScriptedLifter lifter)
    {
        var screen = await lifter.Screen.WaitFor(s => s.Contains(" REST ") || s.Contains(" LIFT "), "a rest or a set");
        if (screen.Contains(" REST "))
        {
            lifter.Press("KPEnter");
            await lifter.Sees(" LIFT ");
        }
    }

    private static async Task NoNumberIsReadWrong(ScriptedLifter lifter)
    {
        lifter.Press("KP*", "6", "2", ",", "5");
        await lifter.Screen.WaitFor(s => s.Contains("back to reps"), "the weight being typed");
        lifter.Press("KPEnter");
        (await lifter.Sees("ENTER again")).Should().Contain("62.5 kg");
        lifter.Press("KP/");
        await lifter.Screen.WaitFor(s => !s.Contains("62.5"), "the weight as asked for again");
    }

    private static async Task AnUnknownKeyChangesNothing(ScriptedLifter lifter)
    {
        lifter.Press("#");
        await lifter.Sees("does nothing here");
        await lifter.Screen.WaitFor(s => !s.Contains("does nothing here"), "the sentence gone");
    }

    private static async Task AWindowThatShrinksKeepsWhatIsTyped(ScriptedLifter lifter, int columns, int rows)
    {
        lifter.Press("KP1");
        await lifter.Sees("ENTER did 1");
        lifter.Screen.Resize(30, 8);
        await lifter.Screen.WaitFor(s => s.Contains(" x 1") && s.Split('\n').Length <= 9, "the small page with the 1 typed");
        lifter.Screen.Resize(columns, rows);
        await lifter.Sees("ENTER did 1 ");
        lifter.Press("KP/");
        await lifter.Screen.WaitFor(s => !s.Contains("ENTER did 1 "), "the reps as asked for again");
    }

    private static void ASecondProgramIsRefused(GymFolder gym)
    {
        using var second = Piped.Start([.. ProgramUnderTest.RackSide, "--plain", "--data", gym.Path], new Dictionary<string, string>());

        second.End().GetAwaiter().GetResult().Should().Be(75);
        second.Output.Should().BeEmpty();
    }

    private static void OnlyWhatWasDoneIsKept(GymFolder gym)
    {
        var session = gym.Sessions().Single();
        session.Closed.Should().BeFalse();
        session.Sets.Where(s => s.Set.Kind == SetKind.Working).Select(s => (s.Set.Number, s.Set.Done, s.Set.Load)).Should()
            .StartWith([(1, 3, Mass.Kg(20)), (2, 5, Mass.Kg(22.5m))]);
        session.Sets.Should().Contain(s => s.Set.Done == 11);
        session.Facts.OfType<ExerciseSwapped>().Should().ContainSingle();
    }

    // SGR, ECMA-48 8.3.117: 30 to 49 and 90 to 107 name colours.
    private static void OnlySafeSignsWereSent(Tmux screen, Dictionary<string, string> variables)
    {
        var sent = Encoding.UTF8.GetString(screen.Sent());
        var seven = variables["LANG"] == "C";
        Escapes().Replace(sent, "").Where(c => c > '~' && !(Safe.Contains(c) && !seven)).Should().BeEmpty();
        if (variables.ContainsKey("NO_COLOR"))
        {
            Inks().Matches(sent).SelectMany(m => m.Groups[1].Value.Split(';')).Should().OnlyContain(code => code == "" || code == "0" || code == "1" || code == "7");
        }
    }

    [GeneratedRegex("\u001b\\[([0-9;:]*)m")]
    private static partial Regex Inks();

    [GeneratedRegex("\u001b(\\[[0-?]*[ -/]*[@-~]|\\][^\u0007\u001b]*(\u0007|\u001b\\\\)|P[^\u001b]*\u001b\\\\|[@-_=>])")]
    private static partial Regex Escapes();
}
