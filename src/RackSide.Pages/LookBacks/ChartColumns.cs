using NodaTime;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;

namespace RackSide.Pages.LookBacks;

/// <summary>What the columns of a chart stand for.</summary>
/// <param name="Points">One a column, oldest first; null for a week without any.</param>
/// <param name="ByWeek">Whether a column is a week; else it is an entry of its own.</param>
public sealed record ChartColumns(IReadOnlyList<CoursePoint?> Points, bool ByWeek)
{
    /// <summary>
    /// A column for each point; where there is no room for that, one for each ISO week with the highest of its points, weeks
    /// without any among them, and of those the newest there is room for.
    /// </summary>
    /// <param name="points">Oldest first.</param>
    /// <param name="most">How many columns there may be; 1 or more.</param>
    /// <param name="weekly">Whether each point is a week already.</param>
    public static ChartColumns Of(IReadOnlyList<CoursePoint> points, int most, bool weekly = false) =>
        points.Count == 0 || (points.Count <= most && !weekly) ? new([.. points], weekly) : Weeks(points, most);

    private static ChartColumns Weeks(IReadOnlyList<CoursePoint> points, int most)
    {
        var best = points.GroupBy(p => Monday(p.Date)).ToDictionary(w => w.Key, w => w.MaxBy(p => p.Upper));
        var last = best.Keys.Max();
        var weeks = Math.Min(most, (Period.DaysBetween(best.Keys.Min(), last) / 7) + 1);
        return new([.. Enumerable.Range(0, weeks).Select(i => best.GetValueOrDefault(last.PlusWeeks(i - weeks + 1)))], true);
    }

    private static LocalDate Monday(LocalDate date) => IsoWeek.Of(date).Monday;
}
