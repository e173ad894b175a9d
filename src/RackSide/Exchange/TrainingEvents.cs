using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Exchange;

/// <summary>
/// The training days for a calendar: those done lately, and of each kind the next so many, the same number each time. So
/// every day of an earlier file that is not done yet is in the next one again under its number, and none is left behind
/// when days move, drop or wait.
/// </summary>
internal static class TrainingEvents
{
    private const int WeeksAhead = 4, DaysBack = 56;

    // Half a year holds four weeks of training and any holiday; what a longer absence leaves over is off.
    private const int DaysSearched = 182;

    /// <summary>The events, oldest first.</summary>
    public static IReadOnlyList<TrainingEvent> Of(Plan plan, TrainingHistory history, LocalDate today)
    {
        var done = history.Days;
        var ahead = DueRule.Ahead(plan, done, today, DaysSearched, Past.Away(history)).Where(day => day.Kind == DueKind.Train).ToList();
        return [.. Enum.GetValues<DayKind>().SelectMany(kind => OfKind(plan, done, ahead, kind, today)).OrderBy(e => e.Date)];
    }

    private static IEnumerable<TrainingEvent> OfKind(Plan plan, IReadOnlyList<DayDone> done, List<DayAhead> ahead, DayKind kind, LocalDate today)
    {
        var past = done.Where(d => d.Date <= today && Kind(plan, d) == kind).OrderBy(d => d.Date)
            .Select((d, i) => new TrainingEvent(kind, i + 1, d.Date, plan.Day(d.DayKey)?.Name ?? d.DayKey, "done")).ToList();
        var next = ahead.Where(a => a.Day!.Kind == kind)
            .Select((a, i) => new TrainingEvent(kind, past.Count + i + 1, a.Date, a.Day!.Name, a.Why)).Take(Wanted(plan, kind)).ToList();
        var off = Enumerable.Range(past.Count + next.Count + 1, Wanted(plan, kind) - next.Count)
            .Select(n => new TrainingEvent(kind, n, today, kind == DayKind.Strength ? "Strength day" : "Skills day", "off until further notice") { Off = true });
        return [.. past.Where(e => e.Date >= today.PlusDays(-DaysBack)), .. next, .. off];
    }

    private static DayKind Kind(Plan plan, DayDone done) => plan.Day(done.DayKey)?.Kind ?? DayKind.Strength;

    private static int Wanted(Plan plan, DayKind kind)
    {
        var keys = plan.Rolls ? plan.Rolling.OfType<string>() : plan.Week.Values;
        var share = keys.Count(key => plan.Day(key)?.Kind == kind);
        return plan.Rolls ? (int)Math.Ceiling(WeeksAhead * 7m * share / plan.Rolling.Count) : WeeksAhead * share;
    }
}
