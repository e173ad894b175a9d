using LiteDB;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Documents;

/// <summary>Body weights told outside a session.</summary>
internal static class Weights
{
    /// <summary>The document for a body weight.</summary>
    public static BsonDocument Of(KeptWeight kept) => new()
    {
        ["id"] = Ids.Of(kept.Id),
        ["lifter"] = kept.Lifter,
        ["date"] = Times.Of(kept.Date),
        ["weight"] = Masses.Of(kept.Weight),
    };

    /// <summary>The body weight of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static KeptWeight Read(BsonDocument document) =>
        new(document.Id("id"), document.Text("lifter"), document.Date("date"), document.Mass("weight"));
}
