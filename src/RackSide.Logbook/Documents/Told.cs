using LiteDB;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Documents;

/// <summary>Facts told outside a session.</summary>
internal static class Told
{
    /// <summary>The document for a fact and its lifter.</summary>
    public static BsonDocument Of(KeptFact kept) => new() { ["lifter"] = kept.Lifter, ["fact"] = Facts.Of(kept.Fact) };

    /// <summary>The fact and lifter of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static KeptFact Read(BsonDocument document) => new(document.Text("lifter"), Facts.Read(document.Inner("fact")));
}
