using System.CommandLine;
using RackSide.Kiosk;
using RackSide.Screens;
using RackSide.Screens.Plain;

namespace RackSide.Commands;

/// <summary><c>rackside --kiosk</c>: the screen of a rack that several share, with nothing behind it.</summary>
internal static class KioskScreen
{
    private const string NumLockIsOff = "NumLock is off and cannot be switched on from here: press Num on the pad.";

    /// <summary>Runs it until somebody shuts it down, or the system ends it.</summary>
    public static int Run(RackSideCommand command, Surroundings around, ParseResult parsed, ScreenOptions options, bool plain)
    {
        var settings = KioskSettings.Read(around.Environment);
        using var gym = command.Open(parsed);
        gym.StartSharing(around.Environment);
        using var manager = new ServiceManager(around.Environment, TimeProvider.System);
        using var visit = new KioskVisit(gym, settings, manager.Ticked, NumLock.SwitchOn() is false ? NumLockIsOff : "", around.Sticks);
        var look = ScreenCommand.Asked(command, around, parsed);
        var shown = options with
        {
            Sound = options.Sound && gym.Rules is not { Sound: false },
            Appearance = () => look(Looks.Of(gym.Rules, visit.Look)),
            Locked = true,
            Alarm = gym.Rules?.AlarmCommand is { Count: > 0 } program ? new AlarmCommand(program).Ring : Speaker.Find(around.Environment) is { } speaker ? speaker.Play : options.Alarm,
            Hangup = () => Leave(gym, visit),
            Crashed = fault => around.Error.WriteLine(Sorry(fault)),
        };
        var outcome = plain ? PlainHost.Run(visit, gym.Clock, shown, around.In, around.Out) : ScreenHost.Run(visit, gym.Clock, shown);
        visit.Dispose();
        return visit.ShutDown ? ExitCode.ShutDown : Told(around, gym, outcome);
    }

    private static void Leave(Gym gym, KioskVisit visit)
    {
        visit.Dispose();
        gym.Dispose();
    }

    // For the journal: nobody reads a console that is about to show the names again.
    private static int Told(Surroundings around, Gym gym, ScreenOutcome outcome)
    {
        if (outcome.End == ScreenEnd.Failed)
        {
            var disk = outcome.Fault is IOException or UnauthorizedAccessException;
            around.Error.WriteLine(disk ? $"rackside: {gym.Folders.Data}: {outcome.Fault!.Message}" : Sorry(outcome.Fault));
            return disk ? ExitCode.InputOutput : outcome.ExitCode;
        }

        return outcome.ExitCode;
    }

    private static string Sorry(Exception? fault) =>
        $"rackside: a fault in RackSide stopped it ({fault?.GetType().Name}: {fault?.Message}); every set shown as written is in the logbook";
}
