using System.Globalization;
using RackSide.Training.Exercises;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;

namespace RackSide.Pages.LookBacks;

/// <summary>A course as lines of a page: what it shows, then its bars with the highest number and zero at the left.</summary>
internal static class CourseChart
{
    private const int Axis = 7;
    private const int LeastRows = 3;

    /// <summary>The lines; only the first, which says it in words, where there is no room for bars or nothing to show.</summary>
    /// <param name="course">The exercise.</param>
    /// <param name="what">What of it.</param>
    /// <param name="rows">How many lines there may be.</param>
    /// <param name="size">The page.</param>
    public static IReadOnlyList<string> Of(ExerciseCourse course, CourseOf what, int rows, PageSize size)
    {
        var room = Math.Max(1, BodyText.Width(size) - Axis);
        var columns = ChartColumns.Of(course.Points(what), room, what == CourseOf.Volume);
        var told = columns.Points.OfType<CoursePoint>().ToList();
        if (told.Count == 0)
        {
            return [$"{Name(course, what)}: nothing to show"];
        }

        var bars = size.Plain || rows <= LeastRows ? [] : BlockChart.Of(columns.Points, rows - 1, room, size.Fine);
        return [Heading(course, what, columns, told, BodyText.Width(size)), .. bars.Select((bar, i) => Scale(i, bars.Count, told.Max(p => p.Upper)) + bar)];
    }

    /// <summary>The first and the newest number in words; on a narrow page less of it, and the newest alone in the end.</summary>
    private static string Heading(ExerciseCourse course, CourseOf what, ChartColumns columns, List<CoursePoint> told, int width)
    {
        var (by, first, last) = (columns.ByWeek ? " by week" : " by session", Entry(told[0]), Entry(told[^1]));
        var name = $"{Name(course, what)}, {course.Unit}";
        string[] headings = [$"{name}{by}: {first}, {last}", $"{name}: {first}, {last}", $"{name}: {last}"];
        return headings.FirstOrDefault(h => h.Length <= width) ?? headings[^1];
    }

    private static string Name(ExerciseCourse course, CourseOf what) => (what, course.Loaded) switch
    {
        (CourseOf.Load, true) => course.Exercise.LoadType == LoadType.Assisted ? "help" : "load",
        (CourseOf.Load, false) => !course.ByTime ? "best set" : course.Exercise.Held ? "longest hold" : "longest go",
        (CourseOf.Volume, true) => "reps x load",
        (CourseOf.Volume, false) => "in all",
        _ => "one rep, estimated",
    };

    private static string Entry(CoursePoint point) => point.Upper == point.Value
        ? $"{point.Date.Short()[4..]} {Number(point.Value)}"
        : $"{point.Date.Short()[4..]} {Number(Math.Floor(point.Value))} to {Number(Math.Ceiling(point.Upper))}";

    private static string Scale(int row, int rows, decimal highest) => (row == 0 ? Number(highest) : row == rows - 1 ? "0" : "").PadRight(Axis);

    private static string Number(decimal number) => number.ToString(number < 1000 ? "0.#" : "0", CultureInfo.InvariantCulture);
}
