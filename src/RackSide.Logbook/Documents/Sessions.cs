using LiteDB;
using RackSide.Logbook.Packing;
using RackSide.Training.History;

namespace RackSide.Logbook.Documents;

/// <summary>One document a session, packed; its date stands outside too, for the index.</summary>
internal static class Sessions
{
    /// <summary>The document for a session, as the log holds it.</summary>
    public static BsonDocument Of(SessionRecord session) => new()
    {
        ["date"] = Times.Of(session.Head.Date),
        ["packed"] = PackedSessions.Of(session),
    };

    /// <summary>The session of a document; packed, or written out as of format 4 and before and in a record.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static SessionRecord Read(BsonDocument document) => IsPacked(document)
        ? PackedSessions.Read(document["packed"].AsBinary)
        : new(Heads.Read(document.Inner("head")), [.. document.Inners("facts").Select(Facts.Read)]);

    /// <summary>Whether a document is of this format: one of format 4 and before is written out.</summary>
    public static bool IsPacked(BsonDocument document) => document["packed"].IsBinary;

    /// <summary>The document for a session with every field by its name, as a record has it.</summary>
    public static BsonDocument WrittenOut(SessionRecord session) => new()
    {
        ["head"] = Heads.Of(session.Head),
        ["facts"] = new BsonArray(session.Facts.Select(Facts.Of)),
    };
}
