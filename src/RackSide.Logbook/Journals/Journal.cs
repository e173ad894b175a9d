using RackSide.Logbook.Disks;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Journals;

/// <summary>
/// Every write since the copy, each synced before it is acknowledged. Its file is written full of zeros beforehand, so
/// that a full disk does not stop it.
/// </summary>
internal sealed class Journal(IDisk disk, Func<string> rack, int room) : IDisposable
{
    private readonly List<JournalRecord> kept = [];
    private long follows;
    private LogMark? mark;
    private IDiskFile? file;
    private long end;

    /// <summary>What it holds.</summary>
    public IReadOnlyList<JournalRecord> Records => kept;

    /// <summary>Whether it holds nothing that the copy does not hold.</summary>
    public bool IsFresh => kept.Count == 0;

    /// <summary>Whether a record fits without making a larger file.</summary>
    public bool HasRoomFor(JournalRecord record) => file is not null && end + record.Size <= file.Length;

    /// <summary>Whether so many bytes would leave half of it free.</summary>
    public bool HasAmpleRoomFor(int bytes) => file is not null && end + bytes <= file.Length / 2;

    /// <summary>Goes on where a journal that was read ends, and wipes a torn record behind it.</summary>
    /// <exception cref="IOException">It could not be opened or wiped.</exception>
    public void Resume(JournalReading reading)
    {
        Keep(reading.Follows, reading.Records);
        mark = reading.Mark;
        file = disk.Open(FileNames.Journal);
        end = reading.End;
        if (reading.Torn)
        {
            file.Write(new byte[file.Length - end], end);
            file.Sync();
        }
    }

    /// <summary>Remembers the records of a journal whose file cannot be gone on with; the next record writes a new file.</summary>
    public void Keep(long copied, IEnumerable<JournalRecord> records)
    {
        follows = copied;
        kept.AddRange(records);
    }

    /// <summary>Adds a record; returns when it is on disk.</summary>
    /// <exception cref="IOException">It could not be written.</exception>
    public void Append(JournalRecord record)
    {
        if (!TryAppend(record))
        {
            WriteAnew([.. kept, record]);
        }

        kept.Add(record);
    }

    /// <summary>Begins anew after a copy that holds everything up to that write.</summary>
    /// <exception cref="IOException">It could not be written; the old journal goes on being right.</exception>
    /// <param name="copied">The last write of the copy.</param>
    /// <param name="copy">Its mark, which is the log's.</param>
    public void StartAfresh(long copied, LogMark copy)
    {
        (follows, mark) = (copied, copy);
        kept.Clear();
        WriteAnew([]);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        file?.Dispose();
        file = null;
    }

    private bool TryAppend(JournalRecord record)
    {
        if (!HasRoomFor(record))
        {
            return false;
        }

        try
        {
            file!.Write(record.Frame(), end);
            file.Sync();
            end += record.Size;
            return true;
        }
        catch (IOException)
        {
            // After a failed sync the system may have thrown the bytes away and say yes next time: this file is not
            // trusted with another record.
            Dispose();
            return false;
        }
    }

    // A whole new file beside the old one, which stays until the new one has its name.
    private void WriteAnew(IReadOnlyList<JournalRecord> records)
    {
        JournalRecord[] all = [JournalReading.Head(rack(), follows, mark), .. records];
        var used = all.Sum(r => r.Size);
        var bytes = new byte[Math.Max(room, 2 * used)];
        var at = 0;
        foreach (var record in all)
        {
            record.Frame().CopyTo(bytes, at);
            at += record.Size;
        }

        disk.WriteBeside(FileNames.Journal, bytes);
        Dispose();
        disk.PutInPlace(FileNames.Journal);
        file = disk.Open(FileNames.Journal);
        end = used;
    }
}
