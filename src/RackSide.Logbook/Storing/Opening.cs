using NodaTime;
using NodaTime.Text;
using RackSide.Logbook.Copies;
using RackSide.Logbook.Disks;
using RackSide.Logbook.Documents;
using RackSide.Logbook.Journals;

namespace RackSide.Logbook.Storing;

/// <summary>
/// Opens a logbook whose lock is held: the log is opened and verified, or rebuilt; the journal is taken over it; what was
/// damaged beside it is made whole. Every step can be cut off and begun again.
/// </summary>
internal sealed class Opening(IDisk disk, Instant now, int journalRoom, Func<string> newRack)
{
    private readonly Findings findings = new();
    private bool readInFull;

    /// <summary>Opens it.</summary>
    /// <exception cref="LogbookUnreadableException">It cannot be opened; nothing was thrown away.</exception>
    /// <exception cref="NewerFormatException">A newer version wrote one of its files.</exception>
    /// <exception cref="IOException">The disk would not be read or written.</exception>
    public (Store Store, OpenReport Report) Run()
    {
        Begin();
        var reading = ReadJournal();
        var (log, register) = OpenLog(reading);
        var loaded = register.Writes;
        var store = Over(log, register, reading);
        try
        {
            TakeOver(store, reading, loaded);
            if (store.Trouble is not (null or IOException))
            {
                // It can be read and not written: the file is damaged where only a write looks.
                var (renewed, anew) = Renew(store.Everything());
                store = Over(renewed, anew, reading);
            }

            Mend(store, reading, loaded);
            return (store, findings.Report());
        }
        catch
        {
            store.GiveUp();
            throw;
        }
    }

    private Store Over(LogFile log, Register register, JournalReading? reading) =>
        new Store(disk, log, register, new Journal(disk, () => register.Rack, journalRoom)) { Journaled = reading?.Records ?? [] }.Watched();

    // The log first, its copy, and the journal last: so a start that was cut off has no journal and nothing in it, and a
    // journal without a log is always damage.
    private void Begin()
    {
        var none = !disk.Exists(FileNames.Main) && !disk.Exists(FileNames.Copy) && !disk.Exists(FileNames.Journal)
            && disk.ReadAll(FileNames.WriteAhead) is null or [];
        if (none)
        {
            findings.Begun = true;
            Install(FileNames.Main, Engines.Image(new Contents(newRack())));
        }
    }

    private JournalReading? ReadJournal()
    {
        try
        {
            return disk.ReadAll(FileNames.Journal) is { } bytes ? JournalReading.Of(bytes) : null;
        }
        catch (Exception e) when (e is IOException or InvalidDataException)
        {
            return new JournalReading(null, 0, [], 0, Torn: true);
        }
    }

    private (LogFile Log, Register Register) OpenLog(JournalReading? journal)
    {
        if (!disk.Exists(FileNames.Main))
        {
            return Rebuild(journal, "missing");
        }

        try
        {
            return OpenAtRest(journal) ?? Verified();
        }
        catch (DamagedFileException damage)
        {
            return journal is null && !disk.Exists(FileNames.Copy)
                ? throw Foreign(damage)
                : Rebuild(journal, "damaged");
        }
    }

    // Quickly, where it is as it was left: verified then, and not a byte of it changed since.
    private (LogFile Log, Register Register)? OpenAtRest(JournalReading? journal)
    {
        try
        {
            return journal?.Mark?.IsOn(disk) is true ? LogFile.OpenAtRest(disk) : null;
        }
        catch (Exception e) when (e is DamagedFileException or IOException)
        {
            // A sector that cannot be read is damage like any other; the full check meets it again and mends it.
            return null;
        }
    }

    private (LogFile Log, Register Register) Verified()
    {
        readInFull = true;
        var (log, contents) = LogFile.Open(disk);
        if (contents.HoldsWrittenOut)
        {
            (log, contents) = Packed(log, contents);
        }

        return (log, Register.Of(contents, log.Reader));
    }

    // A log of format 4 or before is made anew, a quarter as long. All of it is in one file before a rename decides: a power
    // cut leaves the old one or the new one, of the same writes. Where the disk has no room for both, the old one is gone on with.
    private (LogFile Log, Contents Contents) Packed(LogFile log, Contents contents)
    {
        try
        {
            log.Settle();
            log.Dispose();
            Install(FileNames.Main, Engines.Image(contents));
        }
        catch (Exception)
        {
            // Whatever the engine or the disk threw: nothing of the old one is changed.
            log.GiveUp();
            Replacing.LetGo(disk, FileNames.Main);
        }

        return LogFile.Open(disk);
    }

    private (LogFile Log, Register Register) Rebuild(JournalReading? journal, string found)
    {
        findings.Log = found;
        return Renew(Source(journal));
    }

    private (LogFile Log, Register Register) Renew(Contents contents)
    {
        findings.Log ??= "damaged";
        var image = Engines.Image(contents);
        PutAside(FileNames.Main, "log");
        PutAside(FileNames.WriteAhead, "log-log");
        Install(FileNames.Main, image);
        return Verified();
    }

    // What the copy holds; or, where the journal goes back to the very first write, nothing.
    private Contents Source(JournalReading? journal)
    {
        try
        {
            if (disk.ReadAll(FileNames.Copy) is { } copy)
            {
                return LogFile.Read(copy, FileNames.Copy);
            }

            findings.Copy = "missing";
        }
        catch (Exception e) when (e is DamagedFileException or IOException)
        {
            findings.Copy = "damaged";
        }

        return journal is { Rack: { } rack, Follows: 0 }
            ? new Contents(rack)
            : throw new LogbookUnreadableException(
                $"The logbook in {disk.Folder} cannot be read: the log file is {findings.Log} and its copy is {findings.Copy}. "
                + "Nothing was changed. Put a backup of that folder in its place, or move the folder away to begin a new logbook.");
    }

    private void TakeOver(Store store, JournalReading? journal, long loaded)
    {
        var fresh = (journal?.Records ?? []).Where(r => r.Number > loaded).ToList();
        var taken = store.Replay(fresh.Select(Entry));
        Count(journal, loaded, taken);
        store.Register.Writes = Math.Max(loaded, journal?.Last ?? 0);
        if (findings.Lost is null or > 0)
        {
            // Counts that were given to lost facts must not be given again.
            store.Register.Rack = newRack();
        }

        store.SettleInLog();
    }

    private static Entry? Entry(JournalRecord record)
    {
        try
        {
            return Entries.FromBytes(record.Bytes);
        }
        catch (InvalidDataException)
        {
            return null;
        }
    }

    private void Count(JournalReading? journal, long loaded, long taken)
    {
        findings.Torn = journal is { Torn: true } && journal.Last >= loaded;
        findings.Lost = findings.Log is not null && SaysNothing(journal) ? null : Math.Max(0, (journal?.Last ?? 0) - loaded) - taken;
    }

    private void Mend(Store store, JournalReading? journal, long loaded)
    {
        var begun = journal is null && loaded == 0 && findings.Log is null;
        findings.Journal = begun ? null
            : journal is null ? "missing"
            : SaysNothing(journal) ? "unreadable"
            : !journal.HasHead || journal.Last < loaded || HasGap(journal) ? "damaged"
            : null;
        findings.Copy ??= begun || disk.Exists(FileNames.Copy) ? null : "missing";
        store.Resume(journal, loaded);
        var restless = readInFull && journal is { Records: [] };
        if (begun || restless || findings.Log is not null || findings.Journal is not null || findings.Copy is not null)
        {
            var name = findings.Journal is "damaged" or "unreadable" ? FreeName("journal") : null;
            if (store.TryCopy(name) && name is not null)
            {
                findings.Keep(name);
            }
        }

        // A session whose end only the journal had is copied now that there is a journal to begin anew.
        store.Settle();
    }

    private static bool SaysNothing(JournalReading? journal) => journal is null or { HasHead: false, Records: [] };

    private static bool HasGap(JournalReading journal) =>
        journal.Records.Count > 0 && journal.Last - journal.Follows != journal.Records.Count;

    private void PutAside(string file, string stem)
    {
        if (disk.Exists(file) && !IsEmpty(file))
        {
            var name = FreeName(stem);
            disk.Rename(file, name);
            disk.SyncNames();
            findings.Keep(name);
        }
    }

    private bool IsEmpty(string name)
    {
        using var file = disk.Open(name);
        return file.Length == 0;
    }

    private string FreeName(string stem)
    {
        var name = $"{stem}.bad-{LocalDatePattern.Iso.Format(now.InUtc().Date)}";
        return Enumerable.Range(1, int.MaxValue).Select(n => n == 1 ? name : $"{name}-{n}").First(n => !disk.Exists(n));
    }

    private void Install(string name, byte[] bytes)
    {
        disk.WriteBeside(name, bytes);
        disk.PutInPlace(name);
    }

    private LogbookUnreadableException Foreign(DamagedFileException damage) => new(
        $"{Path.Combine(disk.Folder, FileNames.Main)} is not a RackSide logbook, or is damaged, and there is no copy beside it. "
        + "Nothing was changed. Name another folder, or move that file away.",
        damage);
}
