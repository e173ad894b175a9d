using RackSide.Training.History;

namespace RackSide.Json;

/// <summary>A session by its number.</summary>
/// <param name="Session">Its number, as <c>rackside redate</c> takes it.</param>
/// <param name="Date">Its date, ISO 8601.</param>
/// <param name="DatedAtFirst">The date it began with.</param>
/// <param name="Day">The training day's name.</param>
internal sealed record DatedSessionJson(string Session, string Date, string DatedAtFirst, string Day);

/// <summary>What <c>rackside redate --json</c> prints.</summary>
internal sealed record RedateJson
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>Whose; null where nobody has joined.</summary>
    public required string? Lifter { get; init; }

    /// <summary>The last sessions, oldest first.</summary>
    public required IReadOnlyList<DatedSessionJson> Sessions { get; init; }

    /// <summary>These sessions.</summary>
    public static RedateJson Of(Lifter lifter, IReadOnlyList<SessionRecord> sessions) => new()
    {
        Lifter = lifter.Name.Length > 0 ? lifter.Name : null,
        Sessions = [.. sessions.Select(s => new DatedSessionJson(
            s.Head.Id.ToString(), DatedDayJson.Iso(s.Date), DatedDayJson.Iso(s.Head.Date), s.Head.DayName))],
    };
}
