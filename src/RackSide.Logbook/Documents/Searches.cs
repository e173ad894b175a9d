using LiteDB;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Logbook.Documents;

/// <summary>What a search for a first load may try, as it was settled that day.</summary>
internal static class Searches
{
    /// <summary>The document for a span.</summary>
    public static BsonDocument Of(SearchSpan span) => new()
    {
        ["reps"] = span.Reps,
        ["loads"] = new BsonArray(span.Loads.Select(l => Masses.Of(l))),
        ["first"] = Masses.Of(span.First),
        ["most-at-once"] = Masses.Of(span.MostAtOnce),
    };

    /// <summary>The span of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static SearchSpan Read(BsonDocument document)
    {
        List<Mass> loads = [.. document.Inners("loads").Select(Masses.Read)];
        return loads.Count > 1
            ? new SearchSpan(document.Int("reps"), loads, document.Mass("first"), document.MassOrNull("most-at-once"))
            : throw new InvalidDataException("a search has fewer than two loads");
    }
}
