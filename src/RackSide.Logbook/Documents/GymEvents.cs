using LiteDB;
using RackSide.Training.Racks;

namespace RackSide.Logbook.Documents;

/// <summary>Events that racks exchange, told apart by the word in <c>is</c>.</summary>
internal static class GymEvents
{
    private static readonly Words<LifterFields> Fields = new(
        (LifterFields.Name, "name"), (LifterFields.Unit, "unit"), (LifterFields.Joined, "joined"),
        (LifterFields.CautionsRead, "cautions-read"), (LifterFields.AvoidInverted, "avoid-inverted"), (LifterFields.Pin, "pin"),
        (LifterFields.Plan, "plan"), (LifterFields.Look, "look"), (LifterFields.Body, "body"));

    /// <summary>The document for an event.</summary>
    public static BsonDocument Of(GymEvent one) => one switch
    {
        LifterTold e => new() { ["is"] = "lifter", ["id"] = Ids.Of(e.Id), ["fields"] = Of(e.Fields), ["lifter"] = Lifters.Of(e.Told) },
        SessionStarted e => new() { ["is"] = "session", ["head"] = Heads.Of(e.Head) },
        SessionFact e => new() { ["is"] = "fact", ["who"] = e.Lifter, ["session"] = Ids.Of(e.Session), ["fact"] = Facts.Of(e.Fact) },
        OutsideFact e => new() { ["is"] = "told", ["who"] = e.Lifter, ["fact"] = Facts.Of(e.Fact) },
        OutsideWeight e => new() { ["is"] = "weight", ["who"] = e.Lifter, ["id"] = Ids.Of(e.Id), ["date"] = Times.Of(e.Date), ["weight"] = Masses.Of(e.Weight) },
        LifterErased e => new() { ["is"] = "erased", ["who"] = e.Lifter, ["id"] = Ids.Of(e.Id) },
        _ => throw new ArgumentException($"no document for {one.GetType()}", nameof(one)),
    };

    /// <summary>The event of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static GymEvent Read(BsonDocument d) => d.Text("is") switch
    {
        "lifter" => new LifterTold(d.Id("id"), Lifters.Read(d.Inner("lifter")), ReadFields(d, "fields")),
        "session" => new SessionStarted(Heads.Read(d.Inner("head"))),
        "fact" => new SessionFact(d.Text("who"), d.Id("session"), Facts.Read(d.Inner("fact"))),
        "told" => new OutsideFact(d.Text("who"), Facts.Read(d.Inner("fact"))),
        "weight" => new OutsideWeight(d.Id("id"), d.Text("who"), d.Date("date"), d.Mass("weight")),
        "erased" => new LifterErased(d.Id("id"), d.Text("who")),
        var other => throw new InvalidDataException($"no event '{other}'"),
    };

    /// <summary>The words for fields of a lifter.</summary>
    public static BsonArray Of(LifterFields fields) => new(LifterFieldsOf.Each.Where(f => fields.HasFlag(f)).Select(Fields.Of));

    /// <summary>The fields that such words name.</summary>
    /// <exception cref="InvalidDataException">A word names none.</exception>
    public static LifterFields ReadFields(BsonDocument document, string name)
    {
        try
        {
            return document.List(name).Aggregate(LifterFields.None, (all, word) => all | Fields.Of(word.AsString));
        }
        catch (Exception e) when (e is ArgumentException or InvalidCastException)
        {
            throw new InvalidDataException($"the field '{name}' holds an unknown word", e);
        }
    }
}
