using LiteDB;
using RackSide.Training.History;
using Mapped = RackSide.Logbook.Documents;

namespace RackSide.Logbook.Storing;

/// <summary>A document and the collection it belongs to.</summary>
internal readonly record struct Stored(string Collection, BsonDocument Document);

/// <summary>What is kept, as the document of a number in its collection.</summary>
internal static class Filing
{
    public static Stored Of(Lifter lifter, long number) => Of(Collections.Lifters, number, Mapped.Lifters.Of(lifter));

    public static Stored Of(SessionRecord session, long number) => Of(Collections.Sessions, number, Mapped.Sessions.Of(session));

    public static Stored Of(KeptWeight weight, long number) => Of(Collections.Weights, number, Mapped.Weights.Of(weight));

    public static Stored Of(KeptFact fact, long number) => Of(Collections.Told, number, Mapped.Told.Of(fact));

    private static Stored Of(string collection, long number, BsonDocument document)
    {
        document["_id"] = number;
        return new Stored(collection, document);
    }
}
