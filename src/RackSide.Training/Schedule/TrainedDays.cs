using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.Schedule;

/// <summary>The training days done, asked the few things the rule of the day needs.</summary>
internal sealed class TrainedDays(Plan plan, IReadOnlyList<DayDone> done)
{
    /// <summary>The first date ever trained, or null.</summary>
    public LocalDate? First { get; } = done.Count == 0 ? null : done.Min(d => d.Date);

    /// <summary>The last date trained, or null.</summary>
    public LocalDate? Last { get; } = done.Count == 0 ? null : done.Max(d => d.Date);

    /// <summary>Whether anything was trained on a date.</summary>
    public bool On(LocalDate date) => done.Any(d => d.Date == date);

    /// <summary>The same with one day more.</summary>
    public TrainedDays With(DayDone day) => new(plan, [.. done, day]);

    /// <summary>
    /// The newest strength date before <paramref name="today"/> that nobody made good, or null. A strength day done the
    /// day before its date stands for it, because the rest rule then forbids the date itself; dates before the first
    /// training day are not owed.
    /// </summary>
    public LocalDate? OwedStrength(LocalDate today)
    {
        var due = WeekPattern.StrengthBefore(plan, today);
        return due > First && !done.Any(d => IsStrength(d) && d.Date >= due.Value.PlusDays(-1)) ? due : null;
    }

    private bool IsStrength(DayDone day) => plan.Day(day.DayKey)?.Kind != DayKind.Skills;
}
