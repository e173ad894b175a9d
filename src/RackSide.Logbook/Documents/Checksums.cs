using System.IO.Hashing;
using LiteDB;

namespace RackSide.Logbook.Documents;

/// <summary>
/// A CRC-32 inside each document over its own bytes. The engine's pages carry none, so that some flipped bytes come out
/// as wrong values without an error (docs/durability.md).
/// </summary>
internal static class Checksums
{
    private const string Field = "crc";

    /// <summary>The same document with its checksum.</summary>
    public static BsonDocument Seal(BsonDocument document)
    {
        document[Field] = Over(document);
        return document;
    }

    /// <summary>The same document without its checksum, once that was found right.</summary>
    /// <exception cref="InvalidDataException">It was not.</exception>
    public static BsonDocument Check(BsonDocument document)
    {
        var told = document.Long(Field);
        document.Remove(Field);
        return told == Over(document) ? document : throw new InvalidDataException("a document's checksum is wrong");
    }

    private static long Over(BsonDocument document) => Crc32.HashToUInt32(BsonSerializer.Serialize(document));
}
