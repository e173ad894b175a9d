using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.History;

/// <summary>What was settled when a session began.</summary>
public sealed record SessionHead
{
    /// <summary>The identity of the session's beginning, which is also the session's own.</summary>
    public required FactId Id { get; init; }

    /// <summary>When ENTER was pressed on today's plan.</summary>
    public required Instant Begun { get; init; }

    /// <summary>The day it belongs to, also where it runs past midnight.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>The gym's time zone, IANA id.</summary>
    public required string Zone { get; init; }

    /// <summary>Who trains; the lifter's key.</summary>
    public required string Lifter { get; init; }

    /// <summary>The plan's name.</summary>
    public required string Plan { get; init; }

    /// <summary>The training day's key.</summary>
    public required string DayKey { get; init; }

    /// <summary>The training day's name.</summary>
    public required string DayName { get; init; }

    /// <summary>Strength or skills.</summary>
    public required DayKind Kind { get; init; }

    /// <summary>What was asked for, in order.</summary>
    public required IReadOnlyList<Prescription> Prescriptions { get; init; }
}
