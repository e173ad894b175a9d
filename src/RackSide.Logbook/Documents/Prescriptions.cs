using LiteDB;
using RackSide.Training.History;
using RackSide.Training.Loading;

namespace RackSide.Logbook.Documents;

/// <summary>What a slot asked for, with its reason as shown that day.</summary>
internal static class Prescriptions
{
    /// <summary>The document for a prescription. What came later than the rest, the search and the sides, stands only where there is any.</summary>
    public static BsonDocument Of(Prescription asked)
    {
        var document = Base(asked);
        if (asked.Search is { } search)
        {
            document["search"] = Searches.Of(search);
        }

        if (asked.EachSide)
        {
            document["each-side"] = true;
        }

        return document;
    }

    private static BsonDocument Base(Prescription asked) => new()
    {
        ["slot"] = asked.Slot,
        ["motion"] = Words.Motions.Of(asked.Motion),
        ["exercise"] = asked.Exercise,
        ["scheme"] = Schemes.Of(asked.Scheme),
        ["targets"] = new BsonArray(asked.Targets.Select(t => new BsonValue(t))),
        ["sets-left-out"] = asked.SetsLeftOut,
        ["load"] = Masses.Of(asked.Load),
        ["ramp"] = new BsonArray(asked.Ramp.Select(Of)),
        ["rest"] = Times.Of(asked.Rest),
        ["group"] = asked.Group,
        ["change-over"] = Times.Of(asked.ChangeOver),
        ["why"] = Reasons.Of(asked.Why),
    };

    /// <summary>The prescription of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static Prescription Read(BsonDocument document)
    {
        return new Prescription
        {
            Slot = document.Text("slot"),
            Motion = Words.Motions.Read(document, "motion"),
            Exercise = document.Text("exercise"),
            Scheme = Schemes.Read(document.Inner("scheme")),
            Targets = [.. document.Ints("targets")],
            SetsLeftOut = document.IntOrZero("sets-left-out"),
            EachSide = document.ContainsKey("each-side") && document.Flag("each-side"),
            Load = document.MassOrNull("load"),
            Ramp = [.. document.Inners("ramp").Select(r => new RampSet(r.Mass("load"), r.Int("reps")))],
            Search = document.ContainsKey("search") ? Searches.Read(document.Inner("search")) : null,
            Rest = document.Duration("rest"),
            Group = document.TextOrNull("group"),
            ChangeOver = document.Duration("change-over"),
            Why = Reasons.Read(document.Inner("why")),
        };
    }

    private static BsonDocument Of(RampSet set) => new() { ["load"] = Masses.Of(set.Load), ["reps"] = set.Reps };
}
