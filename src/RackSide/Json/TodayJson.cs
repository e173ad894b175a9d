using NodaTime;
using NodaTime.Text;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Json;

/// <summary>A date and the name of its training day.</summary>
/// <param name="Date">ISO 8601.</param>
/// <param name="Day">The name.</param>
internal sealed record DatedDayJson(string Date, string Day)
{
    /// <summary>That day.</summary>
    public static DatedDayJson Of(LocalDate date, string day) => new(Iso(date), day);

    /// <summary>A date as ISO 8601 writes it.</summary>
    public static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}

/// <summary>A training day.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Name">Its name.</param>
/// <param name="Kind"><c>strength</c> or <c>skills</c>.</param>
internal sealed record DayJson(string Key, string Name, string Kind)
{
    /// <summary>That day.</summary>
    public static DayJson Of(TrainingDay day) => new(day.Key, day.Name, day.Kind == DayKind.Strength ? "strength" : "skills");
}

/// <summary>An exercise that stands in for another.</summary>
/// <param name="Slot">The slot's key.</param>
/// <param name="Wanted">The exercise the plan prefers.</param>
/// <param name="Instead">The one that stands in; null where none can.</param>
/// <param name="Why">What is in the way.</param>
internal sealed record StandInJson(string Slot, string Wanted, string? Instead, string Why);

/// <summary>What <c>rackside today --json</c> prints.</summary>
internal sealed record TodayJson
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>Today.</summary>
    public required string Date { get; init; }

    /// <summary>Who trains; null where nobody has joined.</summary>
    public required string? Lifter { get; init; }

    /// <summary><c>train</c>, <c>rest</c>, <c>away</c> or <c>done</c>.</summary>
    public required string Due { get; init; }

    /// <summary>Why.</summary>
    public required string Why { get; init; }

    /// <summary>The training day, or null.</summary>
    public required DayJson? Day { get; init; }

    /// <summary>How long it takes.</summary>
    public required double EstimateMinutes { get; init; }

    /// <summary>What is asked for, in order.</summary>
    public required IReadOnlyList<PrescriptionJson> Prescriptions { get; init; }

    /// <summary>The plates one side needs at most; the other side needs as many.</summary>
    public required IReadOnlyList<MassJson> PlatesEachSide { get; init; }

    /// <summary>Exercises that stand in for the ones the plan prefers.</summary>
    public required IReadOnlyList<StandInJson> StandIns { get; init; }

    /// <summary>Slots that nothing in the kit can fill.</summary>
    public required IReadOnlyList<string> LeftOut { get; init; }

    /// <summary>The next training day after today.</summary>
    public required DatedDayJson Next { get; init; }

    /// <summary>The session still open, or null.</summary>
    public required DatedDayJson? OpenSession { get; init; }

    /// <summary>Today.</summary>
    public static TodayJson Of(Gym gym, Lifter lifter, TodaysPlan todays, SessionRecord? open) => new()
    {
        Date = DatedDayJson.Iso(gym.Today),
        Lifter = lifter.Name.Length > 0 ? lifter.Name : null,
        Due = todays.Due.Kind switch { DueKind.Train => "train", DueKind.Rest => "rest", DueKind.Away => "away", _ => "done" },
        Why = todays.Due.Why,
        Day = todays.Day is { } day ? DayJson.Of(day) : null,
        EstimateMinutes = Math.Round(todays.Estimate.TotalMinutes),
        Prescriptions = [.. todays.Prescriptions.Select(p => PrescriptionJson.Of(gym.Catalogue, p))],
        PlatesEachSide = [.. todays.PlatesNeeded.Select(MassJson.Of)],
        StandIns = [.. todays.StandIns.Select(s => new StandInJson(s.Slot, s.Wanted.Id, s.Instead?.Id, s.Why))],
        LeftOut = todays.LeftOut,
        Next = DatedDayJson.Of(todays.Due.Next, todays.Due.NextDay.Name),
        OpenSession = open is null ? null : DatedDayJson.Of(open.Date, open.Head.DayName),
    };
}
