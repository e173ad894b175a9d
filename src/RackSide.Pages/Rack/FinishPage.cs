using RackSide.Training.Measures;
using RackSide.Training.Sessions;
using RackSide.Training.Summary;

namespace RackSide.Pages.Rack;

/// <summary>The last page of a session: the week, and body weight asked once.</summary>
internal static class FinishPage
{
    public static Page Draw(Session s, Finishing p, WeekSummary? week, PageSize size)
    {
        var canvas = new Canvas(size) { Tells = new() { Typing = p.Typed.Length > 0 } };
        if (week is not null)
        {
            WeekPage.Draw(canvas, week, Frame.Bottom(size) - 1);
        }

        var row = Frame.Bottom(size) - 1;
        var unit = s.Setting.Lifter.Unit.Symbol();
        var text = $"body weight, if you like: > {p.Typed}{(p.Typed.Length == 0 ? "..." : "")} {unit}";
        var hidden = s.Setting.Lifter.Body.Hidden;
        DrawDoubt(canvas, p.Doubt, row - 1);
        canvas.Fill(0, row, size.Columns, ' ');
        canvas.Write(size.Compact ? 0 : 1, row, Frame.Fit(SessionPages.Told(s) ?? (hidden ? "That was all for today." : text), size.Columns), Look.Bold);
        canvas.Cursor(hidden ? 0 : text.IndexOf('>', StringComparison.Ordinal) + 2 + p.Typed.Length, row);
        Frame.Keys(canvas, Hints(s, p));
        return canvas.Done();
    }

    // It stands over the last lines of the week, so that what was typed stays where it was.
    private static void DrawDoubt(Canvas canvas, string? doubt, int row)
    {
        var lines = doubt is null ? [] : Frame.Wrap($"{doubt}. ENTER again keeps it.", canvas.Size.Columns - 2);
        for (var i = 0; i < lines.Count; i++)
        {
            canvas.Fill(0, row - lines.Count + 1 + i, canvas.Size.Columns, ' ');
            canvas.Write(canvas.Size.Compact ? 0 : 1, row - lines.Count + 1 + i, lines[i], Look.Bold);
        }
    }

    private static IReadOnlyList<KeyHint> Hints(Session s, Finishing p) =>
    [
        new("ENTER", p.Doubt is not null ? "it is right, leave" : p.Typed.Length > 0 ? $"write {p.Typed}, leave" : "done, leave"),
        .. s.Setting.Lifter.Body.Hidden ? [] : new KeyHint[] { new("0-9 .", "type body weight") },
        p.Typed.Length > 0 ? new(KeyTable.Pad(Verb.Menu), "clear") : Hint.Menu,
        Hint.Undo(s),
    ];
}
