using NodaTime;
using RackSide.Training.Schedule;

namespace RackSide.Training.Progression;

/// <summary>
/// The days on which an exercise was done or its motion trained, and how far they lie apart. A substituted exercise keeps
/// its own history of loads, but the motion trained meanwhile keeps the strength for it, so that no lay-off is counted.
/// </summary>
internal sealed class Gaps
{
    private const int AWeek = 7;

    private readonly List<LocalDate> days;
    private readonly LocalDate today;

    /// <param name="own">The dates of the exercise itself, at least one.</param>
    /// <param name="trained">The strength days on which the motion was trained.</param>
    /// <param name="today">The date asked about.</param>
    public Gaps(IEnumerable<LocalDate> own, IEnumerable<LocalDate> trained, LocalDate today)
    {
        days = [.. own.Concat(trained).Where(d => d <= today).Distinct().Order()];
        this.today = today;
    }

    /// <summary>Days since the motion was last trained; 0 where the only day told lies ahead.</summary>
    public int Now => days.Count == 0 ? 0 : Period.DaysBetween(days[^1], today);

    /// <summary>The last day the motion was trained, in words.</summary>
    public string Last => days.Count == 0 ? "" : days[^1].Short();

    /// <summary>The newest day that came after so many days or more without the motion; null where none did.</summary>
    public LocalDate? ReturnAfter(int gapDays) => days.Zip(days.Skip(1))
        .Where(pair => Period.DaysBetween(pair.First, pair.Second) >= gapDays)
        .Select(pair => (LocalDate?)pair.Second)
        .LastOrDefault();

    /// <summary>Whether today is the first day, or within a week of the first day, after so many days or more.</summary>
    public bool IsFirstWeekBack(int gapDays) => Now >= gapDays
        || (ReturnAfter(gapDays) is { } back && Period.DaysBetween(back, today) < AWeek);
}
