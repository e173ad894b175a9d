using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Planning;

/// <summary>The weeks from this one on: what was done this week, and what comes if every day goes as said.</summary>
/// <param name="Today">Today.</param>
/// <param name="Weeks">Each seven days, beginning with the weekday that a shown week begins with.</param>
public sealed record TrainingCalendar(LocalDate Today, IReadOnlyList<IReadOnlyList<DayAhead>> Weeks)
{
    /// <summary>How many weeks are shown.</summary>
    public const int Shown = 4;

    /// <summary>The dates from today on.</summary>
    public IEnumerable<DayAhead> Ahead => Weeks.SelectMany(week => week).Where(day => day.Date >= Today);

    /// <summary>The next weeks of a lifter.</summary>
    /// <param name="plan">The plan, on the lifter's days.</param>
    /// <param name="history">All the lifter did and told.</param>
    /// <param name="today">Today.</param>
    /// <param name="weekStarts">The weekday that a shown week begins with.</param>
    /// <param name="weeks">How many weeks, this one included; 1 or more.</param>
    public static TrainingCalendar For(
        Plan plan, TrainingHistory history, LocalDate today, IsoDayOfWeek weekStarts, int weeks = Shown)
    {
        var (done, away) = (history.Days, Past.Away(history));
        var first = today.DayOfWeek == weekStarts ? today : today.Previous(weekStarts);
        var ahead = DueRule.Ahead(plan, done, today, (7 * weeks) - Period.DaysBetween(first, today), away);
        var days = Enumerable.Range(0, Period.DaysBetween(first, today)).Select(i => Gone(plan, done, away, first.PlusDays(i))).Concat(ahead);
        return new TrainingCalendar(today, [.. days.Chunk(7)]);
    }

    private static DayAhead Gone(Plan plan, IReadOnlyList<DayDone> done, IReadOnlyList<DaysAway> away, LocalDate date) =>
        done.FirstOrDefault(d => d.Date == date) is { } day ? new DayAhead(date, DueKind.DoneToday, plan.Day(day.DayKey), "done")
        : away.Any(a => a.Holds(date)) ? new DayAhead(date, DueKind.Away, null, "away")
        : new DayAhead(date, DueKind.Rest, null, "nothing was done");
}
