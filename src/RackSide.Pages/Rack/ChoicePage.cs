using RackSide.Training.Safety;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>Choices over a session, with the running clock in the corner and the stop signs under the menu.</summary>
internal static class ChoicePage
{
    private static readonly (int Digit, string Text)[] MenuLines =
    [
        (1, "today's plan"), (2, "other exercise"), (3, "stop signs, in full"), (4, "cue card"),
        (5, "cut short"), (6, "body weight"), (8, "leave"), (9, "help: the keys"), (0, "back"),
    ];

    public static void Draw(Canvas canvas, Session s, Choosing p)
    {
        var title = Title(p.What);
        Frame.Header(canvas, title, Corner(s, p.Under));
        var row = Frame.Top(canvas.Size) + (canvas.Size.Compact ? 0 : 1);
        row = DrawLines(canvas, Lines(s, p), row);
        if (p.What == Choice.Menu)
        {
            DrawStopSigns(canvas, row);
        }

        canvas.Cursor(0, Frame.Top(canvas.Size));
        if (SessionPages.Told(s) is { } told)
        {
            canvas.Write(0, Frame.Bottom(canvas.Size) - 1, Frame.Fit(" " + told, canvas.Size.Columns).PadRight(canvas.Size.Columns), Look.Bold);
        }

        Frame.Keys(canvas, Hints(s, p));
    }

    /// <summary>What the clock under a page shows.</summary>
    internal static string Corner(Session s, Phase under) => under switch
    {
        Resting { Clock: { } clock } => $"{(clock.IsHeld ? "held" : "rest")} {Words.Clock(clock.Left(s.Now))}",
        Lifting { Rested.Ends: { } ended } => $"rest over, +{Words.Gone(s.Now - ended)}",
        _ => "",
    };

    private static string Title(Choice what) => what switch
    {
        Choice.Menu => "MENU",
        Choice.OtherExercise => "OTHER EXERCISE, for today",
        Choice.CutShort => "CUT SHORT",
        Choice.BodyWeight => "BODY WEIGHT",
        Choice.Leaving => "LEAVE",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static IEnumerable<string> Lines(Session s, Choosing p) => p.What switch
    {
        Choice.Menu => MenuLines.Select(l => $"{l.Digit}  {l.Text}"),
        Choice.OtherExercise => Offers(s),
        Choice.CutShort => CuttingShort.Lines.Select((l, i) => $"{i + 1}  {l}").Append("").Append("What is not done is left out, which is no miss."),
        Choice.BodyWeight => [$"{(p.Typed.Length == 0 ? "..." : p.Typed)} {(s.Setting.Lifter.Unit == Training.Measures.MassUnit.Kilogram ? "kg" : "lb")}"],
        Choice.Leaving =>
        [
            s.Unwritten.IsEmpty && s.WriteTrouble is null ? "All is written." : "Not all is written yet: wait a moment.",
            "The session stays open: the next start goes on at the",
            "same set, and a running rest goes on by the clock.",
        ],
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static IEnumerable<string> Offers(Session s)
    {
        var offers = Swapping.Offers(s);
        return offers.Count == 0
            ? ["Nothing else of this motion fits this gym's kit. 0 goes back."]
            : offers.Select((o, i) => $"{i + 1}  {s.Setting.Catalogue[o.Exercise].Name}{(o.Load is { Amount: > 0 } l ? $", {l}" : "")}");
    }

    private static int DrawLines(Canvas canvas, IEnumerable<string> lines, int row)
    {
        var margin = canvas.Size.Compact ? 0 : 2;
        var all = lines.ToList();
        var rows = Frame.Bottom(canvas.Size) - row;
        var columns = all.Count > rows || (canvas.Size.Rows < 20 && all.Count > 6) ? 2 : 1;
        var per = (all.Count + columns - 1) / columns;
        foreach (var (line, i) in all.Select((l, i) => (l, i)))
        {
            canvas.Write(margin + (i / per * (canvas.Size.Columns / 2)), row + (i % per), Frame.Fit(line, canvas.Size.Columns / columns - margin));
        }

        return row + per;
    }

    private static void DrawStopSigns(Canvas canvas, int row)
    {
        var (margin, bottom) = (canvas.Size.Compact ? 0 : 2, Frame.Bottom(canvas.Size));
        var text = $"STOP at once for: {string.Join("; ", StopSigns.All)}. {StopSigns.WhatToDo[0]}";
        foreach (var (line, i) in Frame.Wrap(text, canvas.Size.Columns - (2 * margin)).Select((l, i) => (l, i)).Where(l => row + 1 + l.i < bottom))
        {
            canvas.Write(margin, row + i + (canvas.Size.Compact ? 0 : 1), line, Look.Bold);
        }
    }

    private static IReadOnlyList<KeyHint> Hints(Session s, Choosing p) => p.What switch
    {
        Choice.BodyWeight => [new("ENTER", "write it"), new("0-9 .", "type it"), new("/", "back, nothing kept")],
        Choice.Leaving => [new("ENTER", "leave"), new("0", "back to the session")],
        _ => [new("1-9", "choose"), new("0", "back"), new(".", Undoing.Next(s) is { } undo ? $"undo: {undo}" : "nothing to undo")],
    };
}
