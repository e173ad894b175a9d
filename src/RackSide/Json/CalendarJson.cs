using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Schedule;

namespace RackSide.Json;

/// <summary>A date of the calendar.</summary>
/// <param name="Date">ISO 8601.</param>
/// <param name="Is"><c>train</c>, <c>rest</c>, <c>away</c> or <c>done</c>.</param>
/// <param name="Day">The training day, or null.</param>
/// <param name="Why">Why.</param>
internal sealed record CalendarDayJson(string Date, string Is, DayJson? Day, string Why)
{
    /// <summary>That date.</summary>
    public static CalendarDayJson Of(DayAhead day) => new(
        DatedDayJson.Iso(day.Date),
        day.Kind switch { DueKind.Train => "train", DueKind.Rest => "rest", DueKind.Away => "away", _ => "done" },
        day.Day is { } training ? DayJson.Of(training) : null,
        day.Why);
}

/// <summary>What <c>rackside calendar --json</c> prints.</summary>
internal sealed record CalendarJson
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>Today.</summary>
    public required string Date { get; init; }

    /// <summary>Whose; null where nobody has joined.</summary>
    public required string? Lifter { get; init; }

    /// <summary>Four weeks, this one first.</summary>
    public required IReadOnlyList<CalendarDayJson> Days { get; init; }

    /// <summary>These weeks.</summary>
    public static CalendarJson Of(Lifter lifter, TrainingCalendar calendar) => new()
    {
        Date = DatedDayJson.Iso(calendar.Today),
        Lifter = lifter.Name.Length > 0 ? lifter.Name : null,
        Days = [.. calendar.Weeks.SelectMany(week => week).Select(CalendarDayJson.Of)],
    };
}
