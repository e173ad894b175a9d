using LiteDB;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Documents;

/// <summary>What is kept for the exchange between racks.</summary>
internal static class Shares
{
    /// <summary>The number of the document that says how the rack stands; the slots have those above.</summary>
    public const long StateNumber = 1;

    /// <summary>The document for how the rack stands.</summary>
    public static Stored Of(ShareState state) => new(Collections.Racks, new BsonDocument
    {
        ["_id"] = StateNumber,
        ["gym"] = state.Gym,
        ["joined"] = state.Joined,
        ["pulled"] = state.Pulled,
        ["anchor"] = state.Anchor is { } anchor ? Ids.Of(anchor) : BsonValue.Null,
        ["whole"] = state.Whole,
        ["next"] = state.Next,
        ["slots"] = state.Slots,
    });

    /// <summary>How the rack of a document stands.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static ShareState ReadState(BsonDocument d) => new(
        d.TextOrNull("gym"), d.Flag("joined"), d.Long("pulled"), d["anchor"].IsNull ? null : d.Id("anchor"), d.TextOrNull("whole"), d.Long("next"), d.Long("slots"));

    /// <summary>The document for a slot.</summary>
    public static Stored Of(long number, ShareSlot slot)
    {
        var document = Own(slot);
        document["_id"] = number;
        return new Stored(Collections.Racks, document);
    }

    /// <summary>The slot of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static ShareSlot ReadSlot(BsonDocument d) => d.Text("is") switch
    {
        "free" => new ShareSlot.Free(),
        "waiting" => new ShareSlot.Waiting(d.Long("number"), GymEvents.Read(d.Inner("event"))),
        "early" when GymEvents.Read(d.Inner("event")) is Training.Racks.SessionFact early => new ShareSlot.Early(early),
        "gone" when GymEvents.Read(d.Inner("event")) is Training.Racks.LifterErased gone => new ShareSlot.Gone(gone),
        "stamps" => new ShareSlot.Stamps(d.Text("who"), d.Inners("told").ToDictionary(t => GymEvents.ReadFields(t, "field"), t => t.Id("id"))),
        var other => throw new InvalidDataException($"no slot '{other}'"),
    };

    private static BsonDocument Own(ShareSlot slot) => slot switch
    {
        ShareSlot.Free => new() { ["is"] = "free" },
        ShareSlot.Waiting s => new() { ["is"] = "waiting", ["number"] = s.Number, ["event"] = GymEvents.Of(s.Event) },
        ShareSlot.Early s => new() { ["is"] = "early", ["event"] = GymEvents.Of(s.Event) },
        ShareSlot.Gone s => new() { ["is"] = "gone", ["event"] = GymEvents.Of(s.Event) },
        ShareSlot.Stamps s => new()
        {
            ["is"] = "stamps",
            ["who"] = s.Lifter,
            ["told"] = new BsonArray(s.Told.Select(t => new BsonDocument { ["field"] = GymEvents.Of(t.Key), ["id"] = Ids.Of(t.Value) })),
        },
        _ => throw new ArgumentException($"no document for {slot.GetType()}", nameof(slot)),
    };
}
