using NodaTime;
using RackSide.Files;
using RackSide.Logbook;
using RackSide.Places;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary>Looks at the backups of the logbook and at the room there is.</summary>
/// <param name="folders">Where the files lie.</param>
/// <param name="rules">The house rules; null where there are none.</param>
/// <param name="lastSession">When the last session began; null where there is none.</param>
internal sealed class CopyFindings(Folders folders, HouseRules? rules, Instant? lastSession)
{
    private const string Name = "copies";
    private const long LittleRoom = 100_000_000, NoRoom = 2_000_000;

    /// <summary>What was found.</summary>
    public IEnumerable<Finding> All() => [OfBackups(), .. OfRoom() is { } room ? [room] : Array.Empty<Finding>()];

    private Finding OfBackups()
    {
        var all = Backups.In(Path.Combine(folders.Data, Backups.FolderName));
        var broken = all.Where(b => !IsWhole(b.File)).Select(b => b.File.Name).ToList();
        return broken.Count > 0 ? new Finding(Name, $"{string.Join(", ", broken)}: cannot be read", ExitCode.InputOutput) { Remedy = "delete what cannot be read and make another with rackside backup" }
            : all.Count == 0 ? OfNone()
            : OfNewest(all.Count, all[^1].Date);
    }

    private Finding OfNone() => rules is { BackupMegabytes: 0 } ? new Finding(Name, "no backups, as gym.yaml says") { Look = true, Remedy = "rackside backup DIR makes one on a stick" }
        : lastSession is null ? new Finding(Name, "no backups yet; the first is made when a stay ends in which something was written")
        : new Finding(Name, "no backups yet") { Look = true, Remedy = "rackside backup makes one now" };

    private Finding OfNewest(int count, LocalDate newest)
    {
        var text = $"{CountsText.Count(count, "backup")}, all whole, the newest of {newest.Shown()}";
        return lastSession is { } last && last.InUtc().Date > newest.PlusDays(1)
            ? new Finding(Name, $"{text}, which is before the last session") { Look = true, Remedy = "rackside backup makes one now" }
            : new Finding(Name, text);
    }

    private Finding? OfRoom()
    {
        if (!Directory.Exists(folders.Data))
        {
            return null;
        }

        try
        {
            var free = new DriveInfo(folders.Data).AvailableFreeSpace;
            return free < NoRoom ? new Finding("room", $"{Megabytes(free)} free", ExitCode.InputOutput) { Remedy = "free some space, or sets will soon be kept in memory only" }
                : new Finding("room", $"{Megabytes(free)} free") { Look = free < LittleRoom, Remedy = free < LittleRoom ? "free some space" : null };
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static string Megabytes(long bytes) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{bytes / 1_000_000} MB");

    private static bool IsWhole(FileInfo backup)
    {
        try
        {
            LogbookSnapshot.Of(backup);
            return true;
        }
        catch (LogbookUnreadableException)
        {
            return false;
        }
    }
}
