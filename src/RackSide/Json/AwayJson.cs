using RackSide.Training.History;

namespace RackSide.Json;

/// <summary>Days away.</summary>
/// <param name="From">The first, ISO 8601.</param>
/// <param name="Until">The last; null while nobody knows.</param>
/// <param name="For"><c>holiday</c>, <c>illness</c> or <c>other</c>.</param>
internal sealed record DaysAwayJson(string From, string? Until, string For)
{
    /// <summary>Those days.</summary>
    public static DaysAwayJson Of(AwayTold away) => new(
        DatedDayJson.Iso(away.From),
        away.Until is { } last ? DatedDayJson.Iso(last) : null,
        away.For switch { AwayFor.Holiday => "holiday", AwayFor.Illness => "illness", _ => "other" });
}

/// <summary>What <c>rackside away --json</c> prints.</summary>
internal sealed record AwayJson
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>Today.</summary>
    public required string Date { get; init; }

    /// <summary>Who is away; null where nobody has joined.</summary>
    public required string? Lifter { get; init; }

    /// <summary>The days away that are not over, and those over for less than four weeks.</summary>
    public required IReadOnlyList<DaysAwayJson> Away { get; init; }

    /// <summary>These absences.</summary>
    public static AwayJson Of(Gym gym, Lifter lifter, IReadOnlyList<AwayTold> absences) => new()
    {
        Date = DatedDayJson.Iso(gym.Today),
        Lifter = lifter.Name.Length > 0 ? lifter.Name : null,
        Away = [.. absences.Select(DaysAwayJson.Of)],
    };
}
