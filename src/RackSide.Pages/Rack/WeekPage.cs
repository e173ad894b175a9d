using RackSide.Training.Measures;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;

namespace RackSide.Pages.Rack;

/// <summary>
/// The week at one look: a bar a lift on one common scale (full block where it began, shade what came since), the load
/// now, the load next and one word; under them the notes of <see cref="WeekNotes"/>.
/// </summary>
internal static class WeekPage
{
    // The weekly sets, the next day and a word on the first weeks, under the shortest page of lifts.
    private const int RowsOfNotes = 7;

    // Under so many columns a name and two loads leave no room for "now" and "next".
    private const int RoomForWords = 44;

    /// <summary>Draws it below the top line.</summary>
    /// <param name="canvas">What it is drawn on.</param>
    /// <param name="week">The week.</param>
    /// <param name="bottom">The row it ends above.</param>
    /// <param name="movedOn">How many lines of the notes were read and moved away.</param>
    /// <returns>How many lines of the notes there was no room for; 0 where the page holds all.</returns>
    public static int Draw(Canvas canvas, WeekSummary week, int bottom, int movedOn = 0)
    {
        var size = canvas.Size;
        var notes = WeekNotes.Of(week, size.Columns - (2 * Margin(size)));
        Frame.Header(canvas, Title(week), $"{week.Done.Count} of {week.Planned} days done");
        var row = DrawLifts(canvas, week, Frame.Top(size), bottom);
        row += row > Frame.Top(size) && bottom - row > notes.Count ? 1 : 0;
        var unseen = Math.Max(0, notes.Count - Math.Max(0, bottom - row));
        foreach (var line in notes.Skip(Math.Min(movedOn, unseen)).Take(bottom - row))
        {
            canvas.Write(Margin(size), row++, Frame.Fit(line, size.Columns - Margin(size)));
        }

        return unseen;
    }

    private static string Title(WeekSummary week) =>
        $"WEEK {week.Week.Number}   {week.Week.Monday.Short()[4..]} to {week.Week.Sunday.Short()[4..]}";

    private static int DrawLifts(Canvas canvas, WeekSummary week, int row, int bottom)
    {
        if (week.Lifts.Count == 0)
        {
            return row;
        }

        row += DrawHeads(canvas, row);
        var heaviest = week.Lifts.Max(l => (l.Now ?? l.Next).Kilograms);
        var step = bottom - row - RowsOfNotes >= 2 * week.Lifts.Count ? 2 : 1;
        foreach (var lift in week.Lifts)
        {
            DrawLift(canvas, lift, row, heaviest);
            row += step;
        }

        return row - step + 1;
    }

    // A compact page has no row for them and says "now" and "next" in each line.
    private static int DrawHeads(Canvas canvas, int row)
    {
        var size = canvas.Size;
        if (size.Compact)
        {
            return 0;
        }

        canvas.Write(Margin(size), row, "working loads, first day to now", Look.Bold);
        canvas.WriteRight(size.Columns - 10, row, "now     next", Look.Bold);
        return 1;
    }

    private static void DrawLift(Canvas canvas, LiftLine lift, int row, decimal heaviest)
    {
        var size = canvas.Size;
        var worded = size is { Compact: true, Columns: >= RoomForWords };
        canvas.Write(Margin(size), row, Frame.Fit(lift.Name.ToLowerInvariant(), worded || !size.Compact ? 14 : Math.Min(14, size.Columns - 24)));
        if (worded)
        {
            canvas.Write(size.Columns - 34, row, "now");
            canvas.Write(size.Columns - 22, row, "next");
        }
        else if (heaviest > 0 && !size.Compact)
        {
            DrawBar(canvas, lift, row, heaviest, size.Columns - 16 - 32);
        }

        canvas.WriteRight(size.Columns - (worded ? 24 : 18), row, lift.Now?.Number ?? "-");
        canvas.WriteRight(size.Columns - 10, row, lift.Next.ToString(), Look.Bold);
        canvas.Write(size.Columns - 9, row, lift.Word);
    }

    private static void DrawBar(Canvas canvas, LiftLine lift, int row, decimal heaviest, int room)
    {
        var (began, now) = (Cells(lift.Began), Cells(lift.Now));
        canvas.Fill(16, row, Math.Min(began, now), '█', Look.Now);
        canvas.Fill(16 + began, row, Math.Max(0, now - began), '▒', Look.Next);

        int Cells(Mass? mass) => (int)Math.Round((mass?.Kilograms ?? 0) / heaviest * room);
    }

    private static int Margin(PageSize size) => size.Compact ? 0 : 1;
}
