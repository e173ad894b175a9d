using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.Schedule;

/// <summary>The training days done and the days away, asked the few things the rules of the day need.</summary>
internal sealed class TrainedDays
{
    private readonly Plan plan;
    private readonly IReadOnlyList<DaysAway> away;

    /// <summary>The past.</summary>
    /// <param name="plan">Says which of the days done are strength days.</param>
    /// <param name="done">The days done, in any order.</param>
    /// <param name="away">The days away, in any order.</param>
    public TrainedDays(Plan plan, IEnumerable<DayDone> done, IReadOnlyList<DaysAway> away) =>
        (this.plan, this.away, Done) = (plan, away, [.. done.OrderBy(d => d.Date)]);

    /// <summary>The days done, oldest first.</summary>
    public IReadOnlyList<DayDone> Done { get; }

    /// <summary>The first date ever trained, or null.</summary>
    public LocalDate? First => Done.Count == 0 ? null : Done[0].Date;

    /// <summary>The last date trained, or null.</summary>
    public LocalDate? Last => Done.Count == 0 ? null : Done[^1].Date;

    /// <summary>The last date of a strength day, or null.</summary>
    public LocalDate? LastStrength => Done.LastOrDefault(IsStrength)?.Date;

    /// <summary>Whether anything was trained on a date.</summary>
    public bool On(LocalDate date) => AnySince(date, d => d.Date == date);

    /// <summary>Whether a date is one of the days away.</summary>
    public bool IsAway(LocalDate date) => away.Any(a => a.Holds(date));

    /// <summary>The days away that hold a date, or null.</summary>
    public DaysAway? AwayOn(LocalDate date) => away.FirstOrDefault(a => a.Holds(date));

    /// <summary>The same with one day more.</summary>
    public TrainedDays With(DayDone day) => new(plan, Done.Append(day), away);

    /// <summary>The same, if the days away that have no end yet end on a date, or on their first day where that is later.</summary>
    public TrainedDays BackAfter(LocalDate date) =>
        new(plan, Done, [.. away.Select(a => a.Until is null ? a with { Until = LocalDate.Max(a.From, date) } : a)]);

    /// <summary>
    /// The newest strength date before <paramref name="today"/> that nobody made good, or null. A strength day done the
    /// day before its date stands for it, because the rest rule then forbids the date itself; dates before the first
    /// training day are not owed, and days away never are.
    /// </summary>
    public LocalDate? OwedStrength(LocalDate today) => NotMadeGood(today) is { } due && !IsAway(due) ? due : null;

    /// <summary>Whether the newest strength date before <paramref name="today"/> passed while the lifter was away.</summary>
    public bool StrengthPassedAway(LocalDate today) => NotMadeGood(today) is { } due && IsAway(due);

    /// <summary>
    /// The newest date of the pattern before <paramref name="today"/>, where it is a skills day and nothing was done on it
    /// or since, or null. A skills day done the day before its date stands for it.
    /// </summary>
    public LocalDate? OwedSkills(LocalDate today)
    {
        var due = WeekPattern.Before(plan, today);
        return due > First && !IsAway(due.Value) && WeekPattern.On(plan, due.Value)!.Kind == DayKind.Skills
            && !AnySince(due.Value, _ => true) && !AnySince(due.Value.PlusDays(-1), d => !IsStrength(d)) ? due : null;
    }

    /// <summary>Whether a day done was a strength day; one that the plan no longer has counts as one.</summary>
    public bool IsStrength(DayDone day) => plan.Day(day.DayKey)?.Kind != DayKind.Skills;

    private LocalDate? NotMadeGood(LocalDate today)
    {
        var due = WeekPattern.StrengthBefore(plan, today);
        return due > First && !AnySince(due.Value.PlusDays(-1), IsStrength) ? due : null;
    }

    private bool AnySince(LocalDate date, Func<DayDone, bool> which)
    {
        for (var i = Done.Count - 1; i >= 0 && Done[i].Date >= date; i--)
        {
            if (which(Done[i]))
            {
                return true;
            }
        }

        return false;
    }
}
