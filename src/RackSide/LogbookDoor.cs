using NodaTime;
using RackSide.Logbook;
using RackSide.Training.History;

namespace RackSide;

/// <summary>Opens the logbook of a folder, and says in one sentence where it cannot be opened.</summary>
internal static class LogbookDoor
{
    private const string WhileBusy = "Go on there, or close it first; rackside today, summary, calendar and history answer meanwhile.";

    /// <summary>Opens it to look at; where it is open elsewhere, what its copy and journal hold.</summary>
    /// <exception cref="Refusal">It cannot be read.</exception>
    public static ILogbook Look(string folder, IClock clock) =>
        Opened<ILogbook>(folder, () => LiteLogbook.Open(folder, clock.GetCurrentInstant()), _ => LogbookSnapshot.Of(folder));

    /// <summary>Opens it to write in, or begins one.</summary>
    /// <exception cref="Refusal">It is open elsewhere, or cannot be opened.</exception>
    public static LiteLogbook Open(string folder, IClock clock) => Opened(
        folder,
        () => LiteLogbook.Open(folder, clock.GetCurrentInstant()),
        busy => throw new Refusal(ExitCode.Busy, $"{busy.Message} {WhileBusy}"));

    private static T Opened<T>(string folder, Func<T> open, Func<LogbookBusyException, T> busy)
    {
        try
        {
            return Tried(open, busy);
        }
        catch (LogbookUnreadableException unreadable)
        {
            throw new Refusal(ExitCode.InputOutput, unreadable.Message);
        }
        catch (UnauthorizedAccessException)
        {
            throw new Refusal(ExitCode.CannotCreate, $"{folder}: may not be written; choose another folder with --data, or change its owner");
        }
    }

    private static T Tried<T>(Func<T> open, Func<LogbookBusyException, T> busy)
    {
        try
        {
            return open();
        }
        catch (LogbookBusyException elsewhere)
        {
            return busy(elsewhere);
        }
    }
}
