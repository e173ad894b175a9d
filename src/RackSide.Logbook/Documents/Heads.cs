using LiteDB;
using RackSide.Training.History;

namespace RackSide.Logbook.Documents;

/// <summary>What was settled when a session began.</summary>
internal static class Heads
{
    /// <summary>The document for a head.</summary>
    public static BsonDocument Of(SessionHead head) => new()
    {
        ["id"] = Ids.Of(head.Id),
        ["begun"] = Times.Of(head.Begun),
        ["date"] = Times.Of(head.Date),
        ["zone"] = head.Zone,
        ["lifter"] = head.Lifter,
        ["plan"] = head.Plan,
        ["day"] = head.DayKey,
        ["day-name"] = head.DayName,
        ["kind"] = Words.DayKinds.Of(head.Kind),
        ["prescriptions"] = new BsonArray(head.Prescriptions.Select(Prescriptions.Of)),
    };

    /// <summary>The head of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static SessionHead Read(BsonDocument document) => new()
    {
        Id = document.Id("id"),
        Begun = document.Instant("begun"),
        Date = document.Date("date"),
        Zone = document.Text("zone"),
        Lifter = document.Text("lifter"),
        Plan = document.Text("plan"),
        DayKey = document.Text("day"),
        DayName = document.Text("day-name"),
        Kind = Words.DayKinds.Read(document, "kind"),
        Prescriptions = [.. document.Inners("prescriptions").Select(Prescriptions.Read)],
    };
}
