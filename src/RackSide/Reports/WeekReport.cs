using System.Xml.Linq;
using RackSide.Commands;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Progression;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;
using static RackSide.Reports.Html;

namespace RackSide.Reports;

/// <summary>A week on one sheet of A4, for a coach or the wall.</summary>
internal static class WeekReport
{
    /// <summary>So many charts fit a sheet with the tables.</summary>
    private const int MostCharts = 6;

    /// <summary>A chart looks so many sessions back: about a quarter of a year.</summary>
    private const int SessionsBack = 26;

    private const int WeighInsBack = 60;

    /// <summary>The page.</summary>
    /// <param name="lifter">Whose week.</param>
    /// <param name="week">The week.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="history">What was done up to the end of the week.</param>
    /// <param name="weighIns">The body weights up to then.</param>
    public static string Of(Lifter lifter, WeekSummary week, Catalogue catalogue, TrainingHistory history, IReadOnlyList<WeighIn> weighIns) => Page(
        $"{Name(lifter)}, week {WeekEntry.Text(week.Week)}",
        E("h1", $"{Name(lifter)}: week {week.Week.Number}, {week.Week.Monday.Shown()} to {week.Week.Sunday.Shown()}"),
        E("p", $"{week.Done.Count} of {week.Planned} training days done{(week.Done.Count > 0 ? ": " : "")}{string.Join(", ", week.Done.Select(d => $"{d.Date.Short()[..3]} {d.Name}"))}. Next: {week.Next.Short()}, {week.NextDay.Name}."),
        week.Conclusions.Concat(week.Stage).Select(s => E("p", s)),
        Lifts(week),
        Work(week),
        Muscles(week),
        E("div", A("class", "charts"), Charts(lifter, week, catalogue, history, weighIns)),
        E("p", A("class", "small"), "Working loads and body weight as they were written down. General information for healthy adults, not medical advice; a clinician's or a qualified coach's word goes first."));

    private static string Name(Lifter lifter) => lifter.Name.Length > 0 ? lifter.Name : "a newcomer";

    private static object[] Lifts(WeekSummary week) => week.Lifts.Count == 0 ? [] :
    [
        E("h2", "Working loads"),
        E("table",
            E("thead", E("tr", E("th", "lift"), Head("began"), Head("now"), Head("next"), E("th", "then"))),
            E("tbody", week.Lifts.Select(l => E("tr", E("td", l.Name), Cell(l.Began), Cell(l.Now), Cell(l.Next), E("td", l.Word))))),
    ];

    private static XElement Head(string text) => E("th", A("class", "number"), text);

    private static XElement Cell(Mass? mass) => E("td", A("class", "number"), mass?.ToString() ?? "-");

    private static object[] Work(WeekSummary week) =>
    [
        E("h2", "Done"),
        E("p", string.Join("; ", Done(week))),
    ];

    private static IEnumerable<string> Done(WeekSummary week)
    {
        yield return FormattableString.Invariant($"sets on target {week.Work.SetsOnTarget} of {week.Work.Sets}");
        if (week.Work.HoldSeconds > 0)
        {
            yield return FormattableString.Invariant($"held for {week.Work.HoldSeconds} s in all");
        }

        if (week.Work.Trained >= NodaTime.Duration.FromMinutes(1))
        {
            yield return FormattableString.Invariant($"trained {Math.Round(week.Work.Trained.TotalMinutes)} min");
        }

        foreach (var total in week.Work.Totals)
        {
            yield return FormattableString.Invariant($"{total.Name.ToLowerInvariant()} {total.Done} of {total.Asked}");
        }

        foreach (var volume in week.VolumeLoad)
        {
            yield return FormattableString.Invariant($"volume load {volume.Amount:0} {volume.Symbol} (reps times load)");
        }

        if (week.Body is { } body)
        {
            yield return FormattableString.Invariant($"body weight, mean of the week, {body.Mean.Amount:0.0} {body.Mean.Symbol}")
                + (body.Change is { } change ? FormattableString.Invariant($", {change.Amount:+0.0;-0.0;0.0} on last week (at most +{body.Cap.Amount:0.##})") : "");
        }

        if (week.Sleep is { } sleep)
        {
            yield return $"sleep {sleep.Text}";
        }
    }

    private static object[] Muscles(WeekSummary week) => week.Muscles.Any(m => m.Direct > 0) ?
    [
        E("h2", "Working sets by muscle, an estimate"),
        E("p",
            string.Join(", ", week.Muscles.Where(m => m.Direct > 0).Select(m => FormattableString.Invariant($"{m.Group.Name()} {m.Counted:0.#}")))
            + FormattableString.Invariant($"; push {week.Balance.Push}, pull {week.Balance.Pull}. A set counts half for what it trains besides; where size is the aim about {MuscleSets.AboutEnough} a muscle are advised.")),
    ] : [];

    private static IEnumerable<XElement> Charts(
        Lifter lifter, WeekSummary week, Catalogue catalogue, TrainingHistory history, IReadOnlyList<WeighIn> weighIns)
    {
        var lifts = week.Lifts.Select(l => (l.Name, Points: Loads(catalogue[l.Exercise], history))).Where(l => l.Points.Count > 0).Take(MostCharts - 1)
            .Select(l => LineChart.Of(l.Name, l.Points[0].Unit, [.. l.Points.Select(p => (p.Date, p.Value))], stairs: true));
        return weighIns.Count == 0 ? lifts : lifts.Append(LineChart.Of(
            "body weight", lifter.Unit.Symbol(), [.. weighIns.TakeLast(WeighInsBack).Select(w => (w.Date, Math.Round(w.Weight.In(lifter.Unit), 2)))], stairs: false));
    }

    /// <summary>The load of each session in the unit of the newest; what was loaded in another is left out rather than converted.</summary>
    private static List<(NodaTime.LocalDate Date, decimal Value, string Unit)> Loads(Exercise exercise, TrainingHistory history)
    {
        var all = history.Of(exercise.Id).TakeLast(SessionsBack).Select(p => (p.Date, Load: LoadUsed.Of(p, exercise))).Where(p => p.Load is not null)
            .Select(p => (p.Date, Value: p.Load!.Value.Amount, Unit: p.Load.Value.Symbol)).ToList();
        return [.. all.Where(p => p.Unit == all[^1].Unit)];
    }
}
