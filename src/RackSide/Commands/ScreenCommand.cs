using System.CommandLine;
using RackSide.Files;
using RackSide.Kiosk;
using RackSide.Pages.Settings;
using RackSide.Screens;
using RackSide.Screens.Plain;
using RackSide.Visits;

namespace RackSide.Commands;

/// <summary>Bare <c>rackside</c>: the full screen, then the week in plain lines.</summary>
internal static class ScreenCommand
{
    private const string NoTerminal =
        "this is not a terminal that can show a full screen; try rackside today, rackside summary or rackside --plain, or run it in a terminal";

    /// <summary>Set and not empty, it does what <c>--plain</c> does.</summary>
    private const string PlainName = "RACKSIDE_PLAIN";

    /// <summary>Runs the screen until it ends. Nothing is opened, or begun, where no screen can be shown.</summary>
    public static int Run(RackSideCommand command, Surroundings around, ParseResult parsed)
    {
        var options = ScreenOptions.From(around.Environment, parsed.GetValue(command.NoColour), parsed.GetValue(command.Silent));
        var refusal = ScreenHost.Refusal(options);
        var plain = parsed.GetValue(command.Plain) || refusal is ScreenEnd.DumbTerminal || !string.IsNullOrEmpty(around.Environment(PlainName));
        if (refusal is not null && !plain)
        {
            throw new Refusal(ExitCode.Usage, NoTerminal);
        }

        if (!plain)
        {
            ScreenHost.GetReady();
        }

        var asked = Asked(command, around, parsed);
        if (parsed.GetValue(command.Kiosk))
        {
            return KioskScreen.Run(command, around, parsed, options, plain);
        }

        using var gym = command.Open(parsed);
        gym.StartSharing(around.Environment);
        using var visit = new RackVisit(gym, parsed.GetValue(command.Who), places: around.Sticks, with: parsed.GetValue(command.With));
        var alarm = new AlarmCommand(options.Sound ? gym.Rules?.AlarmCommand ?? [] : []);
        var shown = options with
        {
            Appearance = () => asked(Looks.Of(gym.Rules, visit.Lifter?.Look)),
            Alarm = alarm.Ring,
            Hangup = () => Leave(gym, visit),
            Crashed = fault => around.Error.WriteLine(Sorry(fault)),
        };
        var outcome = plain ? PlainHost.Run(visit, gym.Clock, shown, around.In, around.Out) : ScreenHost.Run(visit, gym.Clock, shown);
        var code = Close(around, gym, visit, outcome);
        around.Error.Print(alarm.Trouble is { } trouble ? [$"rackside: {trouble}"] : []);
        return code;
    }

    /// <summary>How the screen looks by the gym's settings, where the command line and the locale say nothing else.</summary>
    internal static Func<ScreenSettings, Appearance> Asked(RackSideCommand command, Surroundings around, ParseResult parsed)
    {
        var tint = parsed.GetValue(command.LookOf) is { } word ? ScreenReader.Tints.Parse(word) ?? throw NoLook(word) : (Tint?)null;
        var (ascii, big, poor) = (parsed.GetValue(command.Ascii), parsed.GetValue(command.Big), Locale.IsSevenBit(around.Environment));
        var fine = around.Environment("TERM") is { Length: > 0 } and not "linux";
        return screen => new Appearance { Tint = tint ?? screen.Tint, SevenBit = ascii || (screen.SevenBit ?? poor), Big = big || screen.Big, Flash = screen.Flash, Fine = fine };
    }

    private static Refusal NoLook(string word) => new(ExitCode.Usage, $"--look: \"{word}\" is no look; write hues, grey or contrast");

    private static void Leave(Gym gym, RackVisit visit)
    {
        visit.Dispose();
        gym.Dispose();
    }

    private static int Close(Surroundings around, Gym gym, RackVisit visit, ScreenOutcome outcome)
    {
        visit.Dispose();
        switch (outcome.End)
        {
            case ScreenEnd.Failed when outcome.Fault is IOException or UnauthorizedAccessException:
                around.Error.WriteLine($"rackside: {gym.Folders.Data}: {outcome.Fault.Message}; free some space or check the folder, then start again");
                return ExitCode.InputOutput;
            case ScreenEnd.Failed:
                around.Error.WriteLine(Sorry(outcome.Fault));
                break;
            default:
                PrintWeek(around, gym, visit);
                break;
        }

        if (outcome.End is ScreenEnd.Interrupted or ScreenEnd.Terminated)
        {
            around.Error.WriteLine($"rackside: {Stopped(outcome.End, gym, visit)}");
        }

        foreach (var told in new[] { gym.Report, gym.Trouble, gym.BackUp() }.OfType<string>())
        {
            around.Error.WriteLine($"rackside: {told}");
        }

        if (visit.Unwritten.Count > 0)
        {
            around.Error.Print(PlainText.Wrap($"rackside: {Unwritten.Told(around, gym, visit, asks: outcome.End is ScreenEnd.Interrupted)}"));
            return ExitCode.InputOutput;
        }

        return outcome.ExitCode;
    }

    private static void PrintWeek(Surroundings around, Gym gym, RackVisit visit)
    {
        foreach (var lifter in new[] { visit.Lifter, visit.With }.OfType<Training.History.Lifter>())
        {
            gym.TrainBy(lifter);
            foreach (var line in gym.Week(lifter, null, gym.Today).Few.Prepend(lifter.Name).Skip(visit.With is null ? 1 : 0))
            {
                around.Out.WriteLine(line);
            }
        }
    }

    private static string Stopped(ScreenEnd end, Gym gym, RackVisit visit)
    {
        var by = end is ScreenEnd.Interrupted ? "stopped by Ctrl+C" : "asked to stop by the system";
        return visit.Lifter is { } lifter && gym.Logbook.Open(lifter.Key) is not null
            ? $"{by}; the session stays open, start again to go on at the same set"
            : $"{by}; {(visit.Unwritten.Count > 0 ? "the session is in memory alone" : "nothing was open")}";
    }

    private static string Sorry(Exception? fault) =>
        $"rackside: a fault in RackSide stopped it ({fault?.GetType().Name}: {fault?.Message}); every set shown as written is in the logbook";
}
