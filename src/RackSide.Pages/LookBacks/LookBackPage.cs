using System.Globalization;
using NodaTime;
using RackSide.Pages.Rack;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;

namespace RackSide.Pages.LookBacks;

/// <summary>The page of an exercise: its chart, and under it records, what one repetition may be, and its sessions.</summary>
/// <param name="Course">The exercise.</param>
/// <param name="What">What its chart shows.</param>
internal sealed record LookBackPage(ExerciseCourse Course, CourseOf What) : BodyPage($"LOOK BACK  {Course.Exercise.ShortName}")
{
    private const int MostSessions = 60;
    private const int LabelRoom = 12;
    private const int NewestDays = 300;

    // The chart takes at most two fifths of the page, so that numbers stand under it without a key.
    private const int Parts = 2;
    private const int Of = 5;
    private const int MostChartRows = 13;
    private const int LeastChartRows = 5;

    /// <summary>How many lines were moved on, on a page too small for all.</summary>
    public int MovedOn { get; init; }

    /// <summary>How many lines a page of that size has no room for.</summary>
    public int Unseen(PageSize size) => Math.Max(0, Lines(size).Count - BodyText.Height(size));

    /// <summary>The page.</summary>
    public override Page Draw(PageSize size)
    {
        var unseen = Unseen(size);
        var page = unseen == 0 ? this : this with { Hints = [.. Hints.Take(1), new("+ -", "read on"), .. Hints.Skip(1)] };
        return page.Draw(size, [.. Lines(size).Skip(Math.Min(MovedOn, unseen))]);
    }

    /// <summary>The chart's lines for a page of that size.</summary>
    public static IReadOnlyList<BodyLine> Chart(ExerciseCourse course, CourseOf what, PageSize size) =>
        [.. CourseChart.Of(course, what, Rows(BodyText.Height(size)), size).Select(row => new BodyLine(row))];

    private static int Rows(int height) => Math.Clamp(height * Parts / Of, Math.Min(LeastChartRows, height / 2), MostChartRows);

    private List<BodyLine> Lines(PageSize size) =>
        [.. Chart(Course, What, size), .. size.Compact ? [] : new[] { BodyLine.Blank }, .. Text().SelectMany(line => Labelled(line, size))];

    private IEnumerable<(string Label, string Text)> Text()
    {
        if (Course.Records is { Count: > 0 } records)
        {
            var word = Course.Exercise.LoadType == LoadType.Assisted ? "least help" : "heaviest";
            yield return (word, string.Join("; ", records.Select(r => $"{r.Load} x {r.Reps}, {Day(r.Date)}")));
        }

        if (Course.Maximum is { } span)
        {
            yield return ("one rep", $"at least {Whole(Math.Floor(span.Lowest.Amount))} to {Whole(Math.Ceiling(span.Highest.Amount))} {span.Lowest.Symbol}, estimated{(Course.Exercise.Motion == Motion.Hinge ? ", probably low for this lift" : "")}; nothing to try without a qualified coach");
        }

        foreach (var done in Course.Done.Reverse().Take(MostSessions))
        {
            yield return (Day(done.Date), $"{LookLines.Row(done.Sets)}{LookLines.Noted(done.Notes)}");
        }

        yield return ("", Course.Earlier + Course.Done.Count > MostSessions ? "Earlier days: rackside history." : "That is all.");
    }

    /// <summary>The year stands where it is not the newest one's.</summary>
    private string Day(LocalDate date) => Period.DaysBetween(date, Course.Done[^1].Date) > NewestDays
        ? string.Create(CultureInfo.InvariantCulture, $"{date.Short()[4..]} {date.Year}")
        : date.Short()[4..];

    private static string Whole(decimal number) => number.ToString("0", CultureInfo.InvariantCulture);

    private static IEnumerable<BodyLine> Labelled((string Label, string Text) line, PageSize size) =>
        Frame.Wrap(line.Text, BodyText.Width(size) - LabelRoom).Select((text, i) => new BodyLine((i == 0 ? line.Label : "").PadRight(LabelRoom) + text));
}
