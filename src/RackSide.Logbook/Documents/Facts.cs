using LiteDB;
using RackSide.Training.History;

namespace RackSide.Logbook.Documents;

/// <summary>Facts, told apart by the word in <c>is</c>.</summary>
internal static class Facts
{
    /// <summary>The document for a fact.</summary>
    public static BsonDocument Of(Fact fact)
    {
        var document = Own(fact);
        document["id"] = Ids.Of(fact.Id);
        document["at"] = Times.Of(fact.At);
        return document;
    }

    /// <summary>The fact of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static Fact Read(BsonDocument d)
    {
        var (id, at) = (d.Id("id"), d.Instant("at"));
        return d.Text("is") switch
        {
            "set-done" => SetDone(d),
            "struck" => new FactStruck(id, at, d.Id("what")),
            "form" => new FormTold(id, at, d.Id("set"), d.Flag("slipped")),
            "swapped" => new ExerciseSwapped(id, at, d.Text("slot"), Prescriptions.Read(d.Inner("filled"))),
            "rest" => new RestChanged(id, at, d.InstantOrNull("ends"), d.Duration("left")),
            "ticked" => new ItemTicked(id, at, d.Text("item")),
            "left-out" => new SlotLeftOut(id, at, d.Text("slot")),
            "weighed" => new BodyWeighed(id, at, d.Mass("weight")),
            "closed" => new SessionClosed(id, at),
            var other => throw new InvalidDataException($"no fact '{other}'"),
        };
    }

    private static BsonDocument Own(Fact fact) => fact switch
    {
        SetDone f => SetDone(f),
        FactStruck f => new() { ["is"] = "struck", ["what"] = Ids.Of(f.Struck) },
        FormTold f => new() { ["is"] = "form", ["set"] = Ids.Of(f.Set), ["slipped"] = f.Slipped },
        ExerciseSwapped f => new() { ["is"] = "swapped", ["slot"] = f.Slot, ["filled"] = Prescriptions.Of(f.Filled) },
        RestChanged f => new() { ["is"] = "rest", ["ends"] = f.Ends is { } ends ? Times.Of(ends) : BsonValue.Null, ["left"] = Times.Of(f.Left) },
        ItemTicked f => new() { ["is"] = "ticked", ["item"] = f.Item },
        SlotLeftOut f => new() { ["is"] = "left-out", ["slot"] = f.Slot },
        BodyWeighed f => new() { ["is"] = "weighed", ["weight"] = Masses.Of(f.Weight) },
        SessionClosed => new() { ["is"] = "closed" },
        _ => throw new ArgumentException($"no document for {fact.GetType()}", nameof(fact)),
    };

    private static BsonDocument SetDone(SetDone f) => new()
    {
        ["is"] = "set-done",
        ["slot"] = f.Slot,
        ["exercise"] = f.Exercise,
        ["kind"] = Words.SetKinds.Of(f.Kind),
        ["number"] = f.Number,
        ["target"] = f.Target,
        ["done"] = f.Done,
        ["load"] = Masses.Of(f.Load),
    };

    private static SetDone SetDone(BsonDocument d) => new(
        d.Id("id"),
        d.Instant("at"),
        d.Text("slot"),
        d.Text("exercise"),
        Words.SetKinds.Read(d, "kind"),
        d.Int("number"),
        d.Int("target"),
        d.Int("done"),
        d.MassOrNull("load"));
}
