using LiteDB;
using RackSide.Training.History;

namespace RackSide.Logbook.Documents;

/// <summary>People who train here.</summary>
internal static class Lifters
{
    /// <summary>The document for a lifter.</summary>
    public static BsonDocument Of(Lifter lifter) => new()
    {
        ["key"] = lifter.Key,
        ["name"] = lifter.Name,
        ["unit"] = Words.Units.Of(lifter.Unit),
        ["joined"] = Times.Of(lifter.Joined),
        ["cautions-read"] = lifter.CautionsRead,
        ["avoid-inverted"] = lifter.AvoidInverted,
        ["pin"] = lifter.Pin,
        ["plan"] = lifter.Plan,
    };

    /// <summary>The lifter of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static Lifter Read(BsonDocument document) => new(
        document.Text("key"),
        document.Text("name"),
        Words.Units.Read(document, "unit"),
        document.Instant("joined"),
        document.Flag("cautions-read"),
        document.Flag("avoid-inverted"))
    {
        // Logbooks of before there were PINs have neither.
        Pin = document.TextOrNull("pin"),
        Plan = document.TextOrNull("plan"),
    };
}
