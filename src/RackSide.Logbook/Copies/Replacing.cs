using NodaTime;
using NodaTime.Text;
using RackSide.Logbook.Disks;
using RackSide.Logbook.Journals;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Copies;

/// <summary>
/// Puts another logbook in the place of one that is settled: all of it is in the log, the lock is held. The new log is whole
/// under a passing name before anything goes; the journal goes before the log it belongs to; then one rename decides.
/// Whatever a power cut leaves, the next opening finds the old log or the new one and makes its copy and journal again.
/// </summary>
internal static class Replacing
{
    /// <summary>Puts it in place.</summary>
    /// <exception cref="IOException">It could not be written; the old one is still there.</exception>
    public static void Install(IDisk disk, Contents contents, int journalRoom)
    {
        // The house rules are a file of their own again: which of them holds is not the logbook's to say.
        contents.HouseRules = null;
        var image = Engines.Image(contents);
        Prepare(disk, image);
        disk.Delete(FileNames.Journal);
        disk.SyncNames();
        Empty(disk, FileNames.WriteAhead);
        disk.PutInPlace(FileNames.Main);
        disk.PutInPlace(FileNames.Copy);
        using var journal = new Journal(disk, () => contents.Rack, journalRoom);
        journal.StartAfresh(contents.Writes, LogMark.Of(image));
    }

    private static void Prepare(IDisk disk, byte[] image)
    {
        try
        {
            WriteVerified(disk, FileNames.Main, image);
            WriteVerified(disk, FileNames.Copy, image);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            LetGo(disk, FileNames.Main);
            LetGo(disk, FileNames.Copy);
            throw;
        }
    }

    /// <summary>Gives every file of a logbook another name, with the date; none is replaced.</summary>
    /// <returns>The new names.</returns>
    public static IReadOnlyList<string> PutAside(IDisk disk, LocalDate date)
    {
        List<string> kept = [];
        foreach (var name in new[] { FileNames.Main, FileNames.WriteAhead, FileNames.Journal, FileNames.Copy }.Where(disk.Exists))
        {
            var stem = $"{name}.bad-{LocalDatePattern.Iso.Format(date)}";
            var free = Enumerable.Range(1, int.MaxValue).Select(n => n == 1 ? stem : $"{stem}-{n}").First(n => !disk.Exists(n));
            disk.Rename(name, free);
            kept.Add(free);
        }

        disk.SyncNames();
        return kept;
    }

    /// <summary>Takes away what was half written: on a full disk it takes the room that the logbook needs.</summary>
    public static void LetGo(IDisk disk, string name)
    {
        try
        {
            disk.Delete(DiskFiles.Passing(name));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It is in nobody's way but the disk's, and whoever writes that file next writes over it.
        }
    }

    /// <summary>Writes a file under a passing name and reads it back.</summary>
    /// <exception cref="IOException">It could not be written, or does not read back as it was written.</exception>
    public static void WriteVerified(IDisk disk, string name, byte[] image)
    {
        disk.WriteBeside(name, image);
        var written = disk.ReadAll(DiskFiles.Passing(name));
        if (!image.AsSpan().SequenceEqual(written))
        {
            throw new IOException($"{name} does not read back as it was written; check the disk");
        }

        LogFile.Read(written!, name);
    }

    // The engine would take what stands there for the new log's.
    private static void Empty(IDisk disk, string name)
    {
        using var file = disk.Open(name);
        file.SetLength(0);
        file.Sync();
    }
}
