using System.CommandLine;
using System.CommandLine.Parsing;
using RackSide.Arrivals;
using RackSide.Files;
using RackSide.Kiosk;
using RackSide.Pages.Settings;
using RackSide.Screens;
using RackSide.Screens.Plain;
using RackSide.Time;
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

        var clock = SystemTime.Start(around.Environment);
        var kept = !plain && AsksNothing(command, parsed) ? KeptPages.Find(command.Places(parsed), clock.GetCurrentInstant()) : null;
        using var arrival = new Arrival(kept, clock, () => Begin(command, around, parsed, options.Sound));
        var shown = options with
        {
            Appearance = () => arrival.Look(stay => asked(Looks.Of(stay.Gym.Rules, stay.Visit.Lifter?.Look))),
            Alarm = bell => arrival.Stay.Alarm.Ring(bell),
            Hangup = arrival.Dispose,
            Crashed = fault => around.Error.WriteLine(Sorry(fault)),
        };
        var outcome = plain ? PlainHost.Run(arrival, arrival, shown, around.In, around.Out) : ScreenHost.Run(arrival, arrival, shown);
        var stay = arrival.Stay;
        var code = Close(around, stay.Gym, stay.Visit, outcome);
        around.Error.Print(stay.Alarm.Trouble is { } trouble ? [$"rackside: {trouble}"] : []);
        if (outcome.End is not ScreenEnd.Failed)
        {
            Keep(command, parsed, arrival, shown.Appearance());
        }

        return code;
    }

    private static Stay Begin(RackSideCommand command, Surroundings around, ParseResult parsed, bool sound)
    {
        var gym = command.Open(parsed);
        gym.StartSharing(around.Environment);
        return new Stay(gym, g => new RackVisit(g, parsed.GetValue(command.Who), places: around.Sticks, with: parsed.GetValue(command.With)), sound);
    }

    // Who asks for anything in particular is not shown what was drawn for who did not.
    private static bool AsksNothing(RackSideCommand command, ParseResult parsed) =>
        parsed.CommandResult.Children.OfType<OptionResult>().All(o => o.Implicit || o.Option == command.Data || o.Option == command.Silent);

    // What the next start paints first. The gym closes before, because closing writes.
    private static void Keep(RackSideCommand command, ParseResult parsed, Arrival arrival, Appearance look)
    {
        if (arrival.Drawn is { Plain: false } size && AsksNothing(command, parsed) && arrival.Stay.Visit.Unwritten.Count == 0)
        {
            var pages = ComingDays.Pages(arrival.Stay.Gym, size, look);
            arrival.Dispose();
            KeptPages.Keep(arrival.Stay.Gym.Folders, pages);
        }
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
