using LiteDB;
using RackSide.Training.History;

namespace RackSide.Logbook.Documents;

/// <summary>A fact's identity as a list of two: the rack, its count.</summary>
internal static class Ids
{
    /// <summary>The list for an identity.</summary>
    public static BsonValue Of(FactId id) => new BsonArray { id.Rack, id.Sequence };

    /// <summary>The identity of a field.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static FactId Id(this BsonDocument document, string name) => document.List(name) is [{ IsString: true } rack, { IsInt64: true } count]
        ? new FactId(rack.AsString, count.AsInt64)
        : throw new InvalidDataException($"the field '{name}' is no identity");
}
