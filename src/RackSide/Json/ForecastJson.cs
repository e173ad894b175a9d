using RackSide.Training.Forecasting;
using RackSide.Training.History;

namespace RackSide.Json;

/// <summary>A span of loads at the end of a week.</summary>
internal sealed record LoadSpanJson(string Until, MassJson Easiest, MassJson Middle, MassJson Hardest);

/// <summary>One lift of a forecast.</summary>
internal sealed record LiftForecastJson(string Slot, ExerciseJson Exercise, MassJson Next, IReadOnlyList<LoadSpanJson> Weeks);

/// <summary>What <c>rackside forecast --json</c> prints.</summary>
/// <param name="Lifter">Whose; null where nobody has joined.</param>
/// <param name="From">The day it was made.</param>
/// <param name="Lifts">The lifts that can be told.</param>
/// <param name="NotTold">Those that cannot.</param>
/// <param name="Attendance">The share of strength days it expects to be done.</param>
/// <param name="Assumes">What it takes for granted.</param>
internal sealed record ForecastJson(
    string? Lifter,
    string From,
    IReadOnlyList<LiftForecastJson> Lifts,
    IReadOnlyList<string> NotTold,
    double Attendance,
    IReadOnlyList<string> Assumes)
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>That forecast.</summary>
    public static ForecastJson Of(Lifter lifter, Forecast forecast) => new(
        lifter.Name.Length > 0 ? lifter.Name : null,
        DatedDayJson.Iso(forecast.From),
        [.. forecast.Lifts.Select(Lift)],
        forecast.NotTold,
        Math.Round(forecast.Attendance, 3),
        Forecast.Assumes);

    private static LiftForecastJson Lift(LiftForecast lift) => new(
        lift.Slot,
        new ExerciseJson(lift.Exercise, lift.Name),
        MassJson.Of(lift.Now),
        [.. lift.Weeks.Select(w => new LoadSpanJson(DatedDayJson.Iso(w.Until), MassJson.Of(w.Easiest), MassJson.Of(w.Middle), MassJson.Of(w.Hardest)))]);
}
