using RackSide.Logbook.Disks;
using RackSide.Logbook.Documents;
using RackSide.Logbook.Journals;
using RackSide.Training.History;

namespace RackSide.Logbook.Storing;

/// <summary>The log, its journal, its copy and what they hold, kept in step. One caller at a time.</summary>
internal sealed class Store(IDisk disk, LogFile log, Register register, Journal journal) : IDisposable
{
    private readonly Dictionary<(string Collection, long Id), Stored> waiting = [];
    private About written = register.About;
    private long registered = -1;
    private bool closes;
    private bool imported;

    /// <summary>What was written.</summary>
    public Register Register => register;

    /// <summary>What a journal that was found says, until it is gone on with.</summary>
    public IReadOnlyList<JournalRecord> Journaled { get; init; } = [];

    /// <summary>Why the log takes nothing more until it is opened again; null while it does. The journal still takes writes.</summary>
    public Exception? Trouble { get; private set; }

    /// <summary>Reads go elsewhere from the first document on that the log cannot give.</summary>
    public Store Watched()
    {
        log.Failed = e =>
        {
            Fail(e);
            return register.Keeping;
        };
        return this;
    }

    /// <summary>Writes to the journal; returns when it is on disk there, after one sync. <see cref="Settle"/> takes it further.</summary>
    /// <exception cref="IOException">It could not be written; nothing written before is lost.</exception>
    public void Write(Entry entry)
    {
        var record = new JournalRecord(register.Writes + 1, Entries.ToBytes(entry));
        if (!journal.HasRoomFor(record))
        {
            TryCopy(keepJournalAs: null);
        }

        journal.Append(record);
        register.Writes = record.Number;

        // Read back from the bytes written, so that what is answered now is what will be answered tomorrow.
        Replay([Entries.FromBytes(record.Bytes)]);
    }

    /// <summary>Whether a write of so many bytes leaves half of the journal free, so that no copy is near.</summary>
    public bool HasAmpleRoomFor(int bytes) => journal.HasAmpleRoomFor(bytes);

    /// <summary>Writes whole sessions in one transaction of the log, past the journal; then a copy makes up for the journal.</summary>
    /// <exception cref="IOException">They could not be written.</exception>
    public void Import(IEnumerable<SessionRecord> sessions)
    {
        if (Trouble is null)
        {
            sessions.Select(register.Take).OfType<Stored>().ToList().ForEach(Wait);
            Settle();
        }

        Imported();
    }

    /// <summary>Takes many events of the gym in the same way.</summary>
    /// <exception cref="IOException">They could not be written.</exception>
    public void Import(Entry.Pulled pulled)
    {
        if (Trouble is null)
        {
            Replay([pulled]);
            imported = true;
            Settle();
        }

        Imported();
    }

    private void Imported()
    {
        if (Trouble is { } trouble)
        {
            throw new IOException($"These sessions could not be written to the logbook in {disk.Folder} ({trouble.Message.TrimEnd('.')}). Nothing written before is lost.", trouble);
        }

        TryCopy(keepJournalAs: null);
    }

    /// <summary>Takes writes that are in the journal; <see cref="Settle"/> then brings them into the log.</summary>
    /// <returns>How many had a place to go.</returns>
    public long Replay(IEnumerable<Entry?> entries)
    {
        var taken = 0L;
        foreach (var entry in entries)
        {
            var homeless = entry is null || (entry is Entry.FactAdded added && !register.Has(added.Session));
            taken += homeless ? 0 : 1;
            if (!homeless && register.Share.Take(entry!, register) is { Count: > 0 } changed)
            {
                changed.ToList().ForEach(Wait);
                closes |= entry is Entry.FactAdded { Fact: SessionClosed };
            }
        }

        return taken;
    }

    /// <summary>
    /// Brings what was taken into the log, in one transaction, so that it lies in two places. Where the log fails, the
    /// journal holds it. A session that was closed is copied too: then a power cut finds the log at rest.
    /// </summary>
    public void Settle()
    {
        if (closes)
        {
            TryCopy(keepJournalAs: null);
        }
        else
        {
            Commit(andRegister: false);
        }
    }

    /// <summary>Brings what was taken into the log and copies nothing: for an opening that goes on with no journal yet.</summary>
    public void SettleInLog() => Commit(andRegister: false);

    // The register goes with the last transaction before a copy: only a log at rest is opened by it.
    private void Commit(bool andRegister)
    {
        var about = register.About;
        if (Trouble is null && (about != written || imported || (andRegister && registered != about.Writes)))
        {
            Guard(() => log.Write(andRegister ? waiting.Values.Append(RegisterNow()) : waiting.Values, about));
            imported = false;
            (written, registered) = (about, andRegister ? about.Writes : registered);
        }

        waiting.Clear();
    }

    private Stored RegisterNow() => new(Collections.Register, Registers.Of(register.State, register.Writes));

    /// <summary>Goes on with a journal that was read, as far as it can be gone on with.</summary>
    /// <param name="reading">What it says; null where there is none.</param>
    /// <param name="loaded">The last write the log held when it was opened.</param>
    public void Resume(JournalReading? reading, long loaded)
    {
        if (reading is { HasHead: true })
        {
            journal.Resume(reading);
            return;
        }

        IReadOnlyList<JournalRecord> records = reading?.Records ?? [];
        journal.Keep(records.Count > 0 ? records[0].Number - 1 : loaded, records);
    }

    /// <summary>Makes a verified copy of the log and begins the journal anew.</summary>
    /// <param name="keepJournalAs">The name under which the old journal is kept; null to let it go.</param>
    /// <returns>Whether it could; if not, the old copy and journal go on being right.</returns>
    public bool TryCopy(string? keepJournalAs)
    {
        closes = false;
        Commit(andRegister: true);
        if (Trouble is not null || Guard(log.Settle) is not { } image)
        {
            return false;
        }

        try
        {
            Copy(image);
            if (keepJournalAs is not null)
            {
                journal.Dispose();
                disk.Rename(FileNames.Journal, keepJournalAs);
            }

            journal.StartAfresh(register.Writes, LogMark.Of(image));
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or DamagedFileException)
        {
            return false;
        }
    }

    /// <summary>Everything written, read from what the failed log still says or else from the copy, and from the journal over it.</summary>
    /// <exception cref="DamagedFileException">Neither can be read.</exception>
    public Contents Everything()
    {
        var all = FromLog() ?? FromCopy();
        foreach (var record in Journaled.Concat(journal.Records))
        {
            all.Replay(Entries.FromBytes(record.Bytes));
        }

        (all.Rack, all.Writes) = (register.Rack, register.Writes);
        return all;
    }

    /// <summary>Lets go of the files as they are.</summary>
    public void GiveUp()
    {
        log.GiveUp();
        journal.Dispose();
    }

    /// <summary>Copies the log where something was written, and lets go of the files.</summary>
    public void Dispose()
    {
        if (!journal.IsFresh)
        {
            TryCopy(keepJournalAs: null);
        }

        if (Trouble is null)
        {
            log.Dispose();
        }

        journal.Dispose();
    }

    private void Copy(byte[] image)
    {
        disk.WriteBeside(FileNames.Copy, image);
        var passing = DiskFiles.Passing(FileNames.Copy);
        if (LogFile.Read(disk.ReadAll(passing)!, passing).About != register.About)
        {
            throw new IOException("the copy does not hold what was written");
        }

        disk.PutInPlace(FileNames.Copy);
    }

    private void Wait(Stored stored) => waiting[(stored.Collection, stored.Document["_id"])] = stored;

    private void Guard(Action act) => Guard(() =>
    {
        act();
        return true;
    });

    // Whatever the engine throws, its files are let go of as they are: the journal has the write, and the next opening
    // brings both together.
    private T? Guard<T>(Func<T> act)
    {
        try
        {
            return act();
        }
        catch (Exception e)
        {
            Fail(e);
            return default;
        }
    }

    private void Fail(Exception e)
    {
        Trouble = e;
        log.GiveUp();
        register.ReadFrom(Everything);
    }

    private Contents? FromLog()
    {
        try
        {
            return LogFile.Read(disk.ReadAll(FileNames.Main) ?? [], FileNames.Main, disk.ReadAll(FileNames.WriteAhead));
        }
        catch (Exception e) when (e is DamagedFileException or IOException)
        {
            return null;
        }
    }

    private Contents FromCopy() => disk.ReadAll(FileNames.Copy) is { } copy ? LogFile.Read(copy, FileNames.Copy) : new Contents(register.Rack);
}
