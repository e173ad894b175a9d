using LiteDB;
using RackSide.Logbook.Documents;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Journals;

/// <summary>What a journal says.</summary>
/// <param name="Rack">The rack that wrote it; null where its first record cannot be read.</param>
/// <param name="Follows">The last write before it, which the copy holds; 0 where its first record cannot be read.</param>
/// <param name="Records">The writes that can be read, in order.</param>
/// <param name="End">Where the next record goes.</param>
/// <param name="Torn">Whether something stands after the last record that is none: a write that the machine stopped in, or damage.</param>
/// <param name="Mark">The mark of the log that it follows; null where it says none.</param>
internal sealed record JournalReading(string? Rack, long Follows, IReadOnlyList<JournalRecord> Records, int End, bool Torn, LogMark? Mark = null)
{
    /// <summary>Whether records can be added where it ends.</summary>
    public bool HasHead => Rack is not null;

    /// <summary>The number of the last write it knows of.</summary>
    public long Last => Records.Count > 0 ? Records[^1].Number : Follows;

    /// <summary>The first record of a journal that follows that write.</summary>
    public static JournalRecord Head(string rack, long follows, LogMark? mark)
    {
        var head = new BsonDocument { ["is"] = "journal", ["format"] = About.Format, ["rack"] = rack };
        if (mark is not null)
        {
            head["length"] = mark.Length;
            head["hash"] = mark.Hash;
        }

        return new JournalRecord(follows, BsonSerializer.Serialize(head));
    }

    /// <summary>Reads a journal's bytes.</summary>
    /// <exception cref="NewerFormatException">A newer version wrote it.</exception>
    public static JournalReading Of(ReadOnlySpan<byte> bytes)
    {
        var head = JournalRecord.Read(bytes);
        var (rack, mark) = head is null ? (null, null) : Told(head);
        var records = new List<JournalRecord>();
        var end = rack is null ? 0 : head!.Size;
        var torn = false;
        for (var at = end; at < bytes.Length;)
        {
            if (JournalRecord.Read(bytes[at..]) is { } record && record.Number > (records.Count > 0 ? records[^1].Number : long.MinValue))
            {
                records.Add(record);
                at = end = at + record.Size;
                torn = false;
                continue;
            }

            torn |= bytes[at..Math.Min(at + JournalRecord.Sector, bytes.Length)].ContainsAnyExcept((byte)0);
            at += JournalRecord.Sector;
        }

        return new JournalReading(rack, rack is null ? 0 : head!.Number, records, end, torn, mark);
    }

    private static (string? Rack, LogMark? Mark) Told(JournalRecord head)
    {
        var document = BsonSerializer.Deserialize(head.Bytes);
        if (document["is"] != "journal")
        {
            return (null, null);
        }

        return document.Int("format") is > About.Format and var newer ? throw new NewerFormatException(newer)
            : (document.Text("rack"), document["hash"].IsInt64 ? new LogMark(document.Long("length"), document.Long("hash")) : null);
    }
}
