using System.Globalization;
using NodaTime;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;
using static RackSide.Reports.Html;

namespace RackSide.Reports;

/// <summary>The weeks of a month on one sheet. A week belongs to the month that its Thursday is in, as ISO 8601 has it for years.</summary>
internal static class MonthReport
{
    /// <summary>The weeks of a month.</summary>
    public static IEnumerable<IsoWeek> WeeksOf(YearMonth month) => Enumerable.Range(1, month.Calendar.GetDaysInMonth(month.Year, month.Month))
        .Select(month.OnDayOfMonth).Where(d => d.DayOfWeek == IsoDayOfWeek.Thursday).Select(IsoWeek.Of);

    /// <summary>The page.</summary>
    /// <param name="lifter">Whose month.</param>
    /// <param name="month">The month.</param>
    /// <param name="weeks">Its weeks as they stood on their Sundays, oldest first; one or more.</param>
    public static string Of(Lifter lifter, YearMonth month, IReadOnlyList<WeekSummary> weeks)
    {
        var name = new LocalDate(month.Year, month.Month, 1).ToString("MMMM uuuu", CultureInfo.InvariantCulture);
        return Page(
            $"{lifter.Name}, {name}",
            E("h1", $"{lifter.Name}: {name}"),
            E("p", $"{weeks.Sum(w => w.Done.Count)} of {weeks.Sum(w => w.Planned)} training days done."),
            E("h2", "Working loads at the end of each week"),
            E("table",
                E("thead", E("tr", E("th", "lift"), weeks.Select(w => E("th", A("class", "number"), $"week {w.Week.Number}")))),
                E("tbody", Lifts(weeks).Select(lift => E("tr", E("td", lift.Name), weeks.Select(w => E("td", A("class", "number"), Load(w, lift)))))),
                E("tbody", Rows(weeks).Select(row => E("tr", E("td", row.Name), row.Cells.Select(c => E("td", A("class", "number"), c)))))),
            weeks.Where(w => w.Conclusions.Count > 0).Select(w => E("p", $"Week {w.Week.Number}: {string.Join(' ', w.Conclusions)}")));
    }

    private static List<LiftLine> Lifts(IReadOnlyList<WeekSummary> weeks) => [.. weeks.SelectMany(w => w.Lifts).DistinctBy(l => (l.Slot, l.Exercise))];

    private static string Load(WeekSummary week, LiftLine lift) =>
        week.Lifts.FirstOrDefault(l => (l.Slot, l.Exercise) == (lift.Slot, lift.Exercise))?.Now?.ToString() ?? "-";

    private static IEnumerable<(string Name, IEnumerable<string> Cells)> Rows(IReadOnlyList<WeekSummary> weeks) =>
    [
        ("days done", weeks.Select(w => FormattableString.Invariant($"{w.Done.Count} of {w.Planned}"))),
        ("sets on target", weeks.Select(w => FormattableString.Invariant($"{w.Work.SetsOnTarget} of {w.Work.Sets}"))),
        ("held, s", weeks.Select(w => FormattableString.Invariant($"{w.Work.HoldSeconds}"))),
        ("trained, min", weeks.Select(w => FormattableString.Invariant($"{Math.Round(w.Work.Trained.TotalMinutes)}"))),
        ("sleep, mean", weeks.Select(w => w.Sleep is { } s ? Readiness.Text(s.Mean) : "-")),
        ("body weight, mean", weeks.Select(w => w.Body is { } b ? FormattableString.Invariant($"{b.Mean.Amount:0.0} {b.Mean.Symbol}") : "-")),
    ];
}
