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
            "reps-left" => new RepsLeftTold(id, at, d.Id("set"), d.Int("left")),
            "away" => new AwayTold(id, at, d.Date("from"), d.DateOrNull("until"), Words.ReasonsAway.Read(d, "for")),
            "sore" => new SoreTold(id, at, d.Date("on"), Words.Motions.Read(d, "motion")),
            "set-known" => new SetKnown(id, at, d.Date("on"), d.Text("exercise"), d.Int("reps"), d.Mass("load")),
            "swapped" => new ExerciseSwapped(id, at, d.Text("slot"), Prescriptions.Read(d.Inner("filled"))),
            "rest" => new RestChanged(id, at, d.InstantOrNull("ends"), d.Duration("left")),
            "ticked" => new ItemTicked(id, at, d.Text("item")),
            "left-out" => new SlotLeftOut(id, at, d.Text("slot")),
            "head-down" => new HeadDownAnswered(id, at, d.Flag("floor")),
            "weighed" => new BodyWeighed(id, at, d.Mass("weight")),
            "redated" => new SessionRedated(id, at, d.Date("date")),
            "closed" => new SessionClosed(id, at),
            var other => throw new InvalidDataException($"no fact '{other}'"),
        };
    }

    private static BsonDocument Own(Fact fact) => fact switch
    {
        SetDone f => SetDone(f),
        FactStruck f => new() { ["is"] = "struck", ["what"] = Ids.Of(f.Struck) },
        FormTold f => new() { ["is"] = "form", ["set"] = Ids.Of(f.Set), ["slipped"] = f.Slipped },
        RepsLeftTold f => new() { ["is"] = "reps-left", ["set"] = Ids.Of(f.Set), ["left"] = f.Left },
        AwayTold f => Away(f),
        SoreTold f => new() { ["is"] = "sore", ["on"] = Times.Of(f.On), ["motion"] = Words.Motions.Of(f.Motion) },
        SetKnown f => SetKnown(f),
        ExerciseSwapped f => new() { ["is"] = "swapped", ["slot"] = f.Slot, ["filled"] = Prescriptions.Of(f.Filled) },
        RestChanged f => new() { ["is"] = "rest", ["ends"] = f.Ends is { } ends ? Times.Of(ends) : BsonValue.Null, ["left"] = Times.Of(f.Left) },
        ItemTicked f => new() { ["is"] = "ticked", ["item"] = f.Item },
        SlotLeftOut f => new() { ["is"] = "left-out", ["slot"] = f.Slot },
        HeadDownAnswered f => new() { ["is"] = "head-down", ["floor"] = f.Floor },
        BodyWeighed f => new() { ["is"] = "weighed", ["weight"] = Masses.Of(f.Weight) },
        SessionRedated f => new() { ["is"] = "redated", ["date"] = Times.Of(f.Date) },
        SessionClosed => new() { ["is"] = "closed" },
        _ => throw new ArgumentException($"no document for {fact.GetType()}", nameof(fact)),
    };

    private static BsonDocument Away(AwayTold f) => new()
    {
        ["is"] = "away",
        ["from"] = Times.Of(f.From),
        ["until"] = f.Until is { } until ? Times.Of(until) : BsonValue.Null,
        ["for"] = Words.ReasonsAway.Of(f.For),
    };

    private static BsonDocument SetKnown(SetKnown f) => new()
    {
        ["is"] = "set-known",
        ["on"] = Times.Of(f.On),
        ["exercise"] = f.Exercise,
        ["reps"] = f.Reps,
        ["load"] = Masses.Of(f.Load),
    };

    // The side came later than the rest: it stands only where there is one.
    private static BsonDocument SetDone(SetDone f)
    {
        var document = Sideless(f);
        if (f.Side is { } side)
        {
            document["side"] = Words.Sides.Of(side);
        }

        return document;
    }

    private static BsonDocument Sideless(SetDone f) => new()
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
        d.MassOrNull("load"))
    {
        Side = d.ContainsKey("side") ? Words.Sides.Read(d, "side") : null,
    };
}
