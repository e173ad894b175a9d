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
            WeekPage.Draw(canvas, week);
        }

        var row = Frame.Bottom(size) - 1;
        var unit = s.Setting.Lifter.Unit.Symbol();
        var text = $"body weight, if you like: > {p.Typed}{(p.Typed.Length == 0 ? "..." : "")} {unit}";
        canvas.Fill(0, row, size.Columns, ' ');
        canvas.Write(size.Compact ? 0 : 1, row, Frame.Fit(SessionPages.Told(s) ?? text, size.Columns), Look.Bold);
        canvas.Cursor(text.IndexOf('>', StringComparison.Ordinal) + 2 + p.Typed.Length, row);
        Frame.Keys(canvas, Hints(s, p));
        return canvas.Done();
    }

    private static IReadOnlyList<KeyHint> Hints(Session s, Finishing p) =>
    [
        new("ENTER", p.Typed.Length > 0 ? $"write {p.Typed}, leave" : "done, leave"),
        new("0-9 .", "type body weight"),
        p.Typed.Length > 0 ? new(KeyTable.Pad(Verb.Menu), "clear") : Hint.Menu,
        Hint.Undo(s),
    ];
}
