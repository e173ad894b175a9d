using NodaTime;
using RackSide.Pages.Rack;
using RackSide.Training.Sessions;
using RackSide.Training.Summary;

namespace RackSide.Pages.Sharing;

/// <summary>The page of two sessions on one bar: that of the one in turn, and always whose it is and how long the other rests.</summary>
public static class SharedPages
{
    /// <summary>Draws the page.</summary>
    /// <param name="both">The two sessions.</param>
    /// <param name="week">The week of the one in turn, for that lifter's last page; null before it is reached.</param>
    /// <param name="size">The room.</param>
    /// <param name="now">The present; an instant before a session's own is taken as its own.</param>
    public static Page Draw(TwoOnOneBar both, WeekSummary? week, PageSize size, Instant now)
    {
        var b = both with { Both = [.. both.Both.Select(s => s with { Now = Instant.Max(now, s.Now) })] };
        if (b.Alone)
        {
            return SessionPages.Draw(b.InTurn, week, size, now);
        }

        var page = b.ListOpen ? List(b, size)
            : b.InTurn.Phase is Lifting or Resting ? SharedLiftPage.Draw(b, size)
            : Named(b, SessionPages.Draw(b.InTurn, week, size, now));
        return page.Telling(page.Tells with
        {
            Topic = $"{b.Turn} {b.ListOpen} {SessionPages.Topic(b.InTurn.Phase, b.InTurn)}",
            Pending = b.Both.Any(s => s.WriteTrouble is null && !s.Unwritten.IsEmpty),
        });
    }

    private static Page List(TwoOnOneBar b, PageSize size) => new TextPage("TWO ON ONE BAR", [.. BarList.Lines(b).Select((l, i) => $"{i + 1}  {l}"), $"now: {b.Name(b.Turn)}; {b.Why}"])
    {
        Place = SharedWords.Other(b),
        Hints = [new("1-4", "choose"), new("0", "back")],
        Said = SharedWords.Told(b),
    }.Draw(size);

    /// <summary>A page of one session under the name of its lifter, with the other's rest in the corner.</summary>
    private static Page Named(TwoOnOneBar b, Page page)
    {
        var (canvas, name, other) = (new Canvas(page.Size) { Tells = page.Tells }, $" {b.Name(b.Turn).ToUpperInvariant()} ", SharedWords.Other(b));
        for (var row = 1; row < page.Size.Rows; row++)
        {
            for (var column = 0; column < page.Size.Columns; column++)
            {
                canvas.Set(column, row, page[column, row].Glyph, page[column, row].Look);
            }
        }

        var title = page.Text.Split('\n')[0].Trim().Split("   ")[0];
        canvas.Write(name.Length + 1, 0, Frame.Fit(title, page.Size.Columns - name.Length - other.Length - 3), Look.Bold);
        canvas.Write(0, 0, name, Look.Bold | Look.Reverse);
        canvas.WriteRight(page.Size.Columns, 0, other);
        canvas.Cursor(page.CursorColumn, page.CursorRow);
        return canvas.Done();
    }
}
