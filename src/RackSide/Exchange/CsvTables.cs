using System.Globalization;
using NodaTime;
using NodaTime.Text;
using RackSide.Logbook;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Exchange;

/// <summary>
/// What stands in a logbook as tables for a spreadsheet; docs/export.md describes them. What was taken back is not in them:
/// the record has that.
/// </summary>
internal sealed class CsvTables(LogbookSnapshot of, IReadOnlyList<Lifter> lifters, Catalogue catalogue)
{
    /// <summary>The tables, each with the name of its file.</summary>
    public IEnumerable<(string File, string Text)> All() =>
    [
        ("lifters.csv", Lifters()), ("sessions.csv", Sessions()), ("sets.csv", Sets()), ("weigh-ins.csv", WeighIns()), ("days.csv", Days()),
    ];

    private string Lifters()
    {
        var table = new CsvLines("lifter", "name", "unit", "joined (UTC)");
        foreach (var lifter in lifters)
        {
            table.Add(CsvLines.Guard(lifter.Key), CsvLines.Guard(lifter.Name), lifter.Unit.Symbol(), Moment(lifter.Joined));
        }

        return table.ToString();
    }

    private string Sessions()
    {
        var table = new CsvLines("session", "lifter", "date", "begun (UTC)", "zone", "plan", "day", "kind", "closed", "note");
        foreach (var (lifter, session) in Each())
        {
            var head = session.Head;
            table.Add(
                CsvLines.Guard(head.Id.ToString()), CsvLines.Guard(lifter.Key), Date(session.Date), Moment(head.Begun), CsvLines.Guard(head.Zone), CsvLines.Guard(head.Plan),
                CsvLines.Guard(head.DayName), head.Kind == DayKind.Strength ? "strength" : "skills", session.Closed ? "yes" : "no", Notes(session, null));
        }

        return table.ToString();
    }

    private string Sets()
    {
        var table = new CsvLines(
            "session", "lifter", "date", "at (UTC)", "slot", "exercise", "name", "kind", "set", "side",
            "target (reps)", "done (reps)", "target (s)", "done (s)", "load (kg)", "load (lb)", "form", "note");
        foreach (var (lifter, session) in Each())
        {
            foreach (var result in session.Sets)
            {
                table.Add(Set(lifter, session, result));
            }
        }

        return table.ToString();
    }

    private string[] Set(Lifter lifter, SessionRecord session, SetResult result)
    {
        var set = result.Set;
        var timed = set.Kind is SetKind.Hold or SetKind.HeldShare;
        var (target, done) = (Whole(set.Target), Whole(set.Done));
        return
        [
            CsvLines.Guard(session.Head.Id.ToString()), CsvLines.Guard(lifter.Key), Date(session.Date), Moment(set.At), CsvLines.Guard(set.Slot),
            CsvLines.Guard(set.Exercise), CsvLines.Guard(catalogue.Find(set.Exercise)?.Name ?? ""), SetWords.Of(set.Kind), Whole(set.Number), SetWords.Of(set.Side),
            timed ? "" : target, timed ? "" : done, timed ? target : "", timed ? done : "", In(set.Load, MassUnit.Kilogram), In(set.Load, MassUnit.Pound),
            result.FormSlipped ? SetWords.Slipped : "", Notes(session, set.Id),
        ];
    }

    private string WeighIns()
    {
        var table = new CsvLines("lifter", "date", "weight (kg)", "weight (lb)");
        foreach (var (lifter, weighed) in lifters.SelectMany(l => of.WeighIns(l.Key).Select(w => (l, w))))
        {
            table.Add(CsvLines.Guard(lifter.Key), Date(weighed.Date), In(weighed.Weight, MassUnit.Kilogram), In(weighed.Weight, MassUnit.Pound));
        }

        return table.ToString();
    }

    private string Days()
    {
        var table = new CsvLines("lifter", "date", "slept (min)", "food (kcal)", "drunk (ml)", "sore");
        foreach (var (lifter, day) in lifters.SelectMany(l => DaysTold.Of(new TrainingHistory([], of.Told(l.Key)).Told).Select(d => (l, d))))
        {
            table.Add(
                CsvLines.Guard(lifter.Key), Date(day.On), day.Slept is { } slept ? Whole((int)slept.TotalMinutes) : "", day.Kilocalories is { } food ? Whole(food) : "",
                day.Millilitres is { } water ? Whole(water) : "", day.Sore?.ToString().ToLowerInvariant() ?? "");
        }

        return table.ToString();
    }

    private IEnumerable<(Lifter Lifter, SessionRecord Session)> Each() => lifters.SelectMany(l => of.Sessions(l.Key).Select(s => (l, s)));

    private static string Notes(SessionRecord session, FactId? set) =>
        CsvLines.Guard(string.Join("; ", session.Standing.OfType<NoteTold>().Where(n => n.Set == set).Select(n => n.Text)));

    // As it was loaded, in the column of its unit; a number in the other unit would be one that nobody loaded.
    private static string In(Mass? mass, MassUnit unit) => mass is { } m && m.Unit == unit ? m.Number : "";

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Date(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private static string Moment(Instant at) => InstantPattern.General.Format(at);
}
