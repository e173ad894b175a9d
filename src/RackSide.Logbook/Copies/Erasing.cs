using RackSide.Logbook.Disks;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Copies;

/// <summary>
/// A lifter out of everything beside the logbook. Files are made anew of documents, so that no page holds what was; the
/// disk's own free blocks are beyond any program's reach.
/// </summary>
internal static class Erasing
{
    /// <summary>Rewrites the backups, and deletes what nobody can look into.</summary>
    public static EraseReport Of(string lifter, IDisk logbook, IDisk? backups)
    {
        List<string> deleted = [.. Delete(logbook, logbook.Names().Where(n => IsBroken(n) || IsPassing(n)))];
        if (backups is null)
        {
            return new EraseReport(0, deleted);
        }

        deleted.AddRange(Delete(backups, backups.Names().Where(IsPassing)));
        var rewritten = 0;
        foreach (var name in backups.Names().Where(n => n.EndsWith(".db", StringComparison.Ordinal)))
        {
            switch (Read(backups, name))
            {
                case null:
                    deleted.AddRange(Delete(backups, [name]));
                    break;
                case var contents when Holds(contents, lifter):
                    Replacing.WriteVerified(backups, name, Engines.Image(contents.Without(lifter, contents.Rack)));
                    backups.PutInPlace(name);
                    rewritten++;
                    break;
            }
        }

        return new EraseReport(rewritten, deleted);
    }

    private static bool IsBroken(string name) => name.Contains(".bad-", StringComparison.Ordinal);

    private static bool IsPassing(string name) => name.EndsWith(".tmp", StringComparison.Ordinal);

    private static bool Holds(Contents contents, string lifter) =>
        contents.Lifters.Any(l => l.Key == lifter) || contents.Sessions.Any(s => s.Head.Lifter == lifter)
        || contents.Weights.Any(w => w.Lifter == lifter) || contents.Told.Any(t => t.Lifter == lifter);

    private static Contents? Read(IDisk backups, string name)
    {
        try
        {
            return LogFile.Read(backups.ReadAll(name)!, name);
        }
        catch (Exception e) when (e is DamagedFileException or NewerFormatException)
        {
            return null;
        }
    }

    private static List<string> Delete(IDisk disk, IEnumerable<string> names)
    {
        List<string> gone = [.. names];
        gone.ForEach(disk.Delete);
        disk.SyncNames();
        return [.. gone.Where(n => !IsPassing(n))];
    }
}
