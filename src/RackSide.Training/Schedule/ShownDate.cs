using NodaTime;
using NodaTime.Text;

namespace RackSide.Training.Schedule;

/// <summary>Dates in words, the same under every culture.</summary>
public static class ShownDate
{
    private static readonly LocalDatePattern ShortPattern = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM");

    private static readonly LocalDatePattern LongPattern = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM uuuu");

    /// <summary>Weekday, day and month: <c>Mon 23 Nov</c>.</summary>
    public static string Short(this LocalDate date) => ShortPattern.Format(date);

    /// <summary>The same with the year: <c>Mon 23 Nov 2026</c>.</summary>
    public static string Shown(this LocalDate date) => LongPattern.Format(date);

    /// <summary>The weekday in full: <c>Monday</c>.</summary>
    public static string Weekday(this LocalDate date) => date.DayOfWeek.ToString();
}
