using LiteDB;
using RackSide.Training.History;

namespace RackSide.Logbook.Documents;

/// <summary>One document a session, its facts inside; the date stands outside the head too, for the index.</summary>
internal static class Sessions
{
    /// <summary>The document for a session.</summary>
    public static BsonDocument Of(SessionRecord session) => new()
    {
        ["date"] = Times.Of(session.Head.Date),
        ["head"] = Heads.Of(session.Head),
        ["facts"] = new BsonArray(session.Facts.Select(Facts.Of)),
    };

    /// <summary>The session of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static SessionRecord Read(BsonDocument document) =>
        new(Heads.Read(document.Inner("head")), [.. document.Inners("facts").Select(Facts.Read)]);
}
