using LiteDB;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Documents;

/// <summary>Writes as the journal holds them, told apart by the word in <c>is</c>.</summary>
internal static class Entries
{
    /// <summary>The bytes for a write.</summary>
    public static byte[] ToBytes(Entry entry) => BsonSerializer.Serialize(Of(entry));

    /// <summary>The write of those bytes.</summary>
    /// <exception cref="InvalidDataException">They are none.</exception>
    public static Entry FromBytes(byte[] bytes)
    {
        var d = BsonSerializer.Deserialize(bytes);
        return d.Text("is") switch
        {
            "lifter" when d.ContainsKey("fields") => new Entry.LifterKept(Lifters.Read(d.Inner("lifter")), d.Id("id"), GymEvents.ReadFields(d, "fields")),
            "lifter" => new Entry.LifterKept(Lifters.Read(d.Inner("lifter"))),
            "session" => new Entry.SessionBegun(Heads.Read(d.Inner("head"))),
            "fact" => new Entry.FactAdded(d.Id("session"), Facts.Read(d.Inner("fact"))),
            "told" => new Entry.FactTold(Told.Read(d.Inner("told"))),
            "weight" => new Entry.WeightKept(Weights.Read(d.Inner("weight"))),
            "pulled" => new Entry.Pulled([.. d.Inners("events").Select(GymEvents.Read)], d.Long("position")) { Last = d["last"].IsNull ? null : d.Id("last") },
            "sent" => new Entry.Sent(d.Long("number"), d.TextOrNull("whole")),
            "share-anew" => new Entry.ShareAnew(d.Flag("whole")),
            "gym-left" => new Entry.GymLeft(),
            var other => throw new InvalidDataException($"no write '{other}'"),
        };
    }

    private static BsonDocument Of(Entry entry) => entry switch
    {
        Entry.LifterKept { Id: { } id } e => new() { ["is"] = "lifter", ["id"] = Ids.Of(id), ["fields"] = GymEvents.Of(e.Fields), ["lifter"] = Lifters.Of(e.Lifter) },
        Entry.LifterKept e => new() { ["is"] = "lifter", ["lifter"] = Lifters.Of(e.Lifter) },
        Entry.SessionBegun e => new() { ["is"] = "session", ["head"] = Heads.Of(e.Head) },
        Entry.FactAdded e => new() { ["is"] = "fact", ["session"] = Ids.Of(e.Session), ["fact"] = Facts.Of(e.Fact) },
        Entry.FactTold e => new() { ["is"] = "told", ["told"] = Told.Of(e.Told) },
        Entry.WeightKept e => new() { ["is"] = "weight", ["weight"] = Weights.Of(e.Weight) },
        Entry.Pulled e => new() { ["is"] = "pulled", ["position"] = e.Position, ["last"] = e.Last is { } last ? Ids.Of(last) : BsonValue.Null, ["events"] = new BsonArray(e.Events.Select(GymEvents.Of)) },
        Entry.Sent e => new() { ["is"] = "sent", ["number"] = e.Number, ["whole"] = e.Whole },
        Entry.ShareAnew e => new() { ["is"] = "share-anew", ["whole"] = e.Whole },
        Entry.GymLeft => new() { ["is"] = "gym-left" },
        _ => throw new ArgumentException($"no document for {entry.GetType()}", nameof(entry)),
    };
}
