using NodaTime;
using RackSide.Logbook.Copies;
using RackSide.Logbook.Disks;
using RackSide.Logbook.Storing;
using RackSide.Training.History;

namespace RackSide.Logbook;

/// <summary>The logbook as a whole: what is taken in, copied out, replaced, erased or put aside at once.</summary>
public sealed partial class LiteLogbook
{
    /// <summary>
    /// Takes whole sessions at once, past the journal: one synced transaction of the log, then a copy of it. All are taken or
    /// none; a session that is here already stays as it is.
    /// </summary>
    /// <exception cref="IOException">They could not be written; open the logbook again before going on.</exception>
    public void Import(IEnumerable<SessionRecord> sessions)
    {
        lock (gate)
        {
            ObjectDisposedException.ThrowIf(closed, this);
            store.Import(sessions);
            writes++;
            lastSequence = Math.Max(lastSequence, store.Register.HighestSequence);
        }
    }

    /// <summary>What it holds now, also what only the journal could take; for a backup or an export.</summary>
    /// <param name="houseRules">The file of house rules that goes with it; null for none.</param>
    public LogbookSnapshot Snapshot(byte[]? houseRules = null)
    {
        lock (gate)
        {
            ObjectDisposedException.ThrowIf(closed, this);
            var all = store.Register.Whole();
            all.HouseRules = houseRules;
            return LogbookSnapshot.Read(Engines.Image(all), FileNames.Main);
        }
    }

    /// <summary>
    /// Puts another logbook in this one's place and closes it. A power cut leaves the old one or the new one. What was here
    /// is gone, so whoever asks has made a backup.
    /// </summary>
    /// <exception cref="IOException">It could not be written; the old one is still there.</exception>
    public void ReplaceBy(LogbookSnapshot other)
    {
        lock (gate)
        {
            ObjectDisposedException.ThrowIf(closed, this);
            closed = true;
            using (hold)
            {
                CloseStore();
                Replacing.Install(disk, InPlace(other.Contents.As(NewRack(), store.Register.Writes)), JournalRoom);
            }
        }
    }

    /// <summary>
    /// Erases a lifter from the logbook, its copy, its journal and its backups, and closes it. Files put aside as damaged, and
    /// backups that cannot be read, are deleted, for nobody can say what is in them. The logbook itself comes last: where this
    /// is cut off, it can be begun again.
    /// </summary>
    /// <exception cref="IOException">Something could not be written; begin again.</exception>
    public EraseReport Erase(string lifter) => Erase(lifter, FolderDisk.IfThere(Path.Combine(disk.Folder, Backups.FolderName)));

    /// <summary>The same, with the backups on another disk or none.</summary>
    internal EraseReport Erase(string lifter, IDisk? backups)
    {
        lock (gate)
        {
            ObjectDisposedException.ThrowIf(closed, this);
            closed = true;
            using (hold)
            {
                var all = store.Register.Whole();
                CloseStore();
                var report = Erasing.Of(lifter, disk, backups);
                Replacing.Install(disk, Without(all, lifter, NewRack()), JournalRoom);
                return report;
            }
        }
    }

    /// <summary>Puts the files of a logbook that cannot be opened aside, under names with the date.</summary>
    /// <returns>Their names.</returns>
    /// <exception cref="LogbookBusyException">It is open in another process.</exception>
    /// <exception cref="IOException">They could not be put aside.</exception>
    public static IReadOnlyList<string> PutAside(string folder, LocalDate date)
    {
        var disk = new FolderDisk(folder);
        using var hold = Lock(disk);
        return Replacing.PutAside(disk, date);
    }

    // Brings everything into the log; only then may something else take its place.
    private void CloseStore()
    {
        store.Dispose();
        if (store.Trouble is { } trouble)
        {
            throw new IOException($"The log file in {disk.Folder} cannot be written ({Told(trouble)}). Nothing was changed. Start again to have it mended.", trouble);
        }
    }
}
