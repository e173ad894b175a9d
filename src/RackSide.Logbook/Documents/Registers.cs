using System.Text;
using LiteDB;
using NodaTime;
using RackSide.Logbook.Storing;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;

namespace RackSide.Logbook.Documents;

/// <summary>
/// The register as one document, its rows packed into bytes: ten years of cards are read at every opening, and as documents
/// of their own they took longer than all else. Words stand once, in a table. It is made of the sessions and can be made of
/// them again, so one that cannot be read is no damage.
/// </summary>
internal static class Registers
{
    /// <summary>The document for a register.</summary>
    public static BsonDocument Of(RegisterState state, long writes) => new()
    {
        ["_id"] = 1L,
        ["version"] = LookBack.CardVersion,
        ["writes"] = writes,
        ["highest"] = state.HighestSequence,
        ["newest"] = state.Newest is { } newest ? new BsonDocument { ["id"] = Ids.Of(newest.Id), ["at"] = Times.Of(newest.At) } : BsonValue.Null,
        ["rows"] = Pack(state.Rows),
    };

    /// <summary>The register of a document; null where it is of another version or not of that many writes.</summary>
    /// <exception cref="InvalidDataException">It cannot be read.</exception>
    public static RegisterState? Read(BsonDocument d, long writes)
    {
        if (d.Int("version") != LookBack.CardVersion || d.Long("writes") != writes)
        {
            return null;
        }

        var newest = d["newest"].IsNull ? null : d.Inner("newest");
        return new RegisterState(
            d.Long("highest"), newest is null ? null : (newest.Id("id"), newest.Instant("at")), Unpack(d["rows"].AsBinary));
    }

    private static byte[] Pack(IReadOnlyList<RegisterRow> rows)
    {
        var words = new WordTable();
        using var packed = new MemoryStream();
        using (var to = new BinaryWriter(packed, Encoding.UTF8))
        {
            to.Write7BitEncodedInt(rows.Count);
            foreach (var row in rows)
            {
                Pack(row, row.Card!, to, words);
            }
        }

        using var all = new MemoryStream();
        using (var to = new BinaryWriter(all, Encoding.UTF8))
        {
            words.Write(to);
            to.Write(packed.ToArray());
        }

        return all.ToArray();
    }

    private static void Pack(RegisterRow row, SessionCard card, BinaryWriter to, WordTable words)
    {
        to.Write7BitEncodedInt64(row.Number);
        to.Write7BitEncodedInt(row.Facts);
        Pack(row.Id, to, words);
        words.Write(card.Lifter, to);
        to.Write7BitEncodedInt(Times.Of(card.Date).AsInt32);
        words.Write(card.DayKey, to);
        words.Write(Words.DayKinds.Of(card.Kind).AsString, to);
        to.Write(card.Trained);
        to.Write(card.Closed);
        to.Write(card.Weighed is not null);
        if (card.Weighed is { } weighed)
        {
            Pack(weighed.Id, to, words);
            to.Write(weighed.Weight.Amount);
            words.Write(Words.Units.Of(weighed.Weight.Unit).AsString, to);
        }

        words.Write([.. card.Motions.Select(m => Words.Motions.Of(m).AsString)], to);
        words.Write(card.Tells, to);
        to.Write7BitEncodedInt(card.Performed.Count);
        foreach (var (slot, exercise) in card.Performed)
        {
            words.Write(slot, to);
            words.Write(exercise, to);
        }

        to.Write7BitEncodedInt(card.Loads.Count);
        foreach (var lifted in card.Loads)
        {
            Pack(lifted, to, words);
        }
    }

    private static void Pack(RepLoad lifted, BinaryWriter to, WordTable words)
    {
        words.Write(lifted.Slot, to);
        words.Write(lifted.Exercise, to);
        to.Write7BitEncodedInt(lifted.Reps);
        to.Write7BitEncodedInt64((long)(lifted.Load.Amount * 1000));
        words.Write(Words.Units.Of(lifted.Load.Unit).AsString, to);
    }

    private static void Pack(FactId id, BinaryWriter to, WordTable words)
    {
        words.Write(id.Rack, to);
        to.Write7BitEncodedInt64(id.Sequence);
    }

    private static List<RegisterRow> Unpack(byte[] bytes)
    {
        try
        {
            using var from = new BinaryReader(new MemoryStream(bytes), Encoding.UTF8);
            var words = WordTable.Read(from);
            var rows = new List<RegisterRow>(from.Read7BitEncodedInt());
            for (var n = rows.Capacity; n > 0; n--)
            {
                rows.Add(Unpack(from, words));
            }

            return rows;
        }
        catch (Exception e) when (e is IOException or FormatException or ArgumentException)
        {
            throw new InvalidDataException("the register cannot be read", e);
        }
    }

    private static RegisterRow Unpack(BinaryReader from, WordTable words)
    {
        var (number, facts, id) = (from.Read7BitEncodedInt64(), from.Read7BitEncodedInt(), Id(from, words));
        var (lifter, date, key) = (words.Next(from), from.Read7BitEncodedInt(), words.Next(from));
        return new RegisterRow(id, number, facts, new SessionCard(
            id, lifter, new LocalDate(date / 10_000, date / 100 % 100, date % 100), key, Words.DayKinds.Of(words.Next(from)))
        {
            Trained = from.ReadBoolean(),
            Closed = from.ReadBoolean(),
            Weighed = from.ReadBoolean() ? (Id(from, words), new Mass(from.ReadDecimal(), Words.Units.Of(words.Next(from)))) : null,
            Motions = [.. words.Several(from).Select(Words.Motions.Of)],
            Tells = words.Several(from),
            Performed = Several(from, () => (words.Next(from), words.Next(from))),
            Loads = Several(from, () => Lifted(from, words)),
        });
    }

    private static RepLoad Lifted(BinaryReader from, WordTable words) => new(
        words.Next(from), words.Next(from), from.Read7BitEncodedInt(), new Mass(from.Read7BitEncodedInt64() / 1000m, Words.Units.Of(words.Next(from))));

    private static T[] Several<T>(BinaryReader from, Func<T> next)
    {
        var several = new T[from.Read7BitEncodedInt()];
        for (var i = 0; i < several.Length; i++)
        {
            several[i] = next();
        }

        return several;
    }

    private static FactId Id(BinaryReader from, WordTable words) => new(words.Next(from), from.Read7BitEncodedInt64());
}
