using LiteDB;
using RackSide.Logbook.Packing;
using RackSide.Logbook.Storing;
using RackSide.Training.History;
using RackSide.Training.Planning;

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
        var to = new PackWriter();
        to.Several(rows, row => Pack(row, row.Card!, to));
        return to.ToArray();
    }

    private static void Pack(RegisterRow row, SessionCard card, PackWriter to)
    {
        to.Number(row.Number);
        to.Number(row.Facts);
        to.Id(row.Id);
        to.Word(card.Lifter);
        to.Date(card.Date);
        to.Word(card.DayKey);
        to.Word(Words.DayKinds, card.Kind);
        to.Flag(card.Trained);
        to.Flag(card.Closed);
        to.Flag(card.Weighed is not null);
        if (card.Weighed is { } weighed)
        {
            to.Id(weighed.Id);
            to.Mass(weighed.Weight);
        }

        to.Several(card.Motions, motion => to.Word(Words.Motions, motion));
        to.Several(card.Tells, to.Word);
        to.Several(card.Performed, performed => Pack(performed, to));
        to.Several(card.Loads, lifted => Pack(lifted, to));
    }

    private static void Pack((string Slot, string Exercise) performed, PackWriter to)
    {
        to.Word(performed.Slot);
        to.Word(performed.Exercise);
    }

    private static void Pack(RepLoad lifted, PackWriter to)
    {
        to.Word(lifted.Slot);
        to.Word(lifted.Exercise);
        to.Number(lifted.Reps);
        to.Mass(lifted.Load);
    }

    private static RegisterRow[] Unpack(byte[] bytes) =>
        PackReader.Read(bytes, "the register", from => from.Several(() => Row(from)));

    private static RegisterRow Row(PackReader from)
    {
        var (number, facts, id) = (from.Number(), from.Int(), from.Id());
        return new RegisterRow(id, number, facts, new SessionCard(id, from.Word(), from.Date(), from.Word(), from.Word(Words.DayKinds))
        {
            Trained = from.Flag(),
            Closed = from.Flag(),
            Weighed = from.Flag() ? (from.Id(), from.Mass()) : null,
            Motions = [.. from.Several(() => from.Word(Words.Motions))],
            Tells = from.Several(from.Word),
            Performed = from.Several(() => (from.Word(), from.Word())),
            Loads = from.Several(() => new RepLoad(from.Word(), from.Word(), from.Int(), from.Mass())),
        });
    }
}
