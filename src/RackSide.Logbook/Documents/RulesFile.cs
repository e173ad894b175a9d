using LiteDB;

namespace RackSide.Logbook.Documents;

/// <summary>The file of house rules that goes with a backup, byte for byte: what it says is nothing to the logbook.</summary>
internal static class RulesFile
{
    /// <summary>The document for it.</summary>
    public static BsonDocument Of(byte[] bytes) => new() { ["_id"] = 1L, ["bytes"] = bytes };

    /// <summary>The bytes of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static byte[] Read(BsonDocument document) => document["bytes"] is { IsBinary: true } bytes
        ? bytes.AsBinary
        : throw new InvalidDataException("the house rules cannot be read");
}
