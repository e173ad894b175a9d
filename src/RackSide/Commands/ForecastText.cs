using RackSide.Training.Forecasting;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary>A forecast in plain lines: a table of spans, then what it takes for granted.</summary>
internal static class ForecastText
{
    /// <summary>The weeks that a column is for.</summary>
    private static readonly int[] Shown = [4, 8, 12];

    /// <summary>The lines, each of at most 80 columns.</summary>
    public static IEnumerable<string> Lines(Forecast forecast)
    {
        if (forecast.Lifts.Count == 0)
        {
            return PlainText.Wrap($"No forecast yet: it takes {Forecast.FewestSessions} sessions of a lift.");
        }

        return
        [
            $"Working loads in the weeks to come, from {forecast.From.Short()} {forecast.From.Year}",
            "",
            $"{"",-18}{"next",-12}{string.Concat(Shown.Select(w => $"{$"in {w} weeks",-16}"))}".TrimEnd(),
            .. forecast.Lifts.Select(Line),
            "",
            .. PlainText.Wrap("Four spans of five should hold what comes, if:"),
            .. Forecast.Assumes.SelectMany(a => PlainText.Wrap($"- {a}", margin: 2)),
            .. PlainText.Wrap($"(lately {100 * forecast.Attendance:0} % of the strength days were done)", margin: 2),
            .. NotTold(forecast),
            .. PlainText.Wrap("It is arithmetic on invented lifters, no promise and no target: form and how you feel decide."),
        ];
    }

    private static string Line(LiftForecast lift) =>
        $"{lift.Name.ToLowerInvariant(),-18}{lift.Now,-12}{string.Concat(Shown.Select(w => $"{Span(lift.Weeks[w - 1]),-16}"))}".TrimEnd();

    private static string Span(LoadSpan span) => span.Easiest == span.Hardest ? span.Easiest.ToString()
        : span.Easiest.Unit == span.Hardest.Unit ? $"{span.Easiest.Number} to {span.Hardest}"
        : $"{span.Easiest} to {span.Hardest}";

    private static IEnumerable<string> NotTold(Forecast forecast) => forecast.NotTold.Count == 0 ? [] : PlainText.Wrap(
        $"Not told: {string.Join(", ", forecast.NotTold.Select(n => n.ToLowerInvariant()))} (fewer than {Forecast.FewestSessions} sessions, or it takes a body weight: rackside weigh).");
}
