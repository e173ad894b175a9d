using System.Globalization;
using RackSide.Training.History;
using RackSide.Training.Sessions;
using RackSide.Training.Skills;

namespace RackSide.Pages.Rack;

/// <summary>A total in hand: what is left in digits for across the room, how many to do now, how fast it goes.</summary>
internal static class TotalPage
{
    private const string State = " LIFT ";

    private const string Unit = " left";

    public static void Draw(Canvas canvas, Session s, Lifting p)
    {
        var item = (TotalItem)s.Place.Current!;
        var size = canvas.Size;
        var (margin, top, done) = (size.Compact ? 0 : 1, Frame.Top(size), $"{s.Place.Counted(item.Slot)} of {item.Total} done");
        SessionPages.Header(canvas, s, Words.Name(s, item).ToUpperInvariant());
        canvas.Tells = canvas.Tells with { Typing = p.Typed.Length > 0 };
        canvas.Write(margin, top, State, Look.Bold | Look.Reverse);
        canvas.Write(margin + State.Length + 1, top, size.Compact ? done : Words.Name(s, item).ToUpperInvariant(), Look.Bold | Look.Now);
        canvas.WriteRight(size.Columns - margin, top, size.Compact ? LiftLines.Rested(s) : done, Look.Bold);
        var row = DrawLeft(canvas, item.Total - s.Place.Counted(item.Slot), margin, top + (size.Compact ? 1 : 2));
        if (!size.Compact)
        {
            SlotList.Draw(canvas, s, row);
        }

        DrawLines(canvas, s, p, item, size.Compact ? 0 : SlotList.Width + 2, row);
        Frame.Keys(canvas, Hints(s, p));
    }

    private static int DrawLeft(Canvas canvas, int reps, int left, int row)
    {
        var (size, text) = (canvas.Size, reps.ToString(CultureInfo.InvariantCulture));
        var scale = BigDigits.Scale(text, size.Columns - left - Unit.Length, Math.Max(BigDigits.Dots, size.Rows * 40 / 100));
        if (scale.Rows == 0 || size.Rows < 12)
        {
            canvas.Write(left, row, text + Unit, Look.Bold);
            canvas.Cursor(left, row);
            return row + 1;
        }

        var last = row + (BigDigits.Dots * scale.Rows) - 1;
        var end = BigDigits.Draw(canvas, left, row, text, scale, Look.Bold);
        canvas.Write(end, last, Unit.TrimStart(), Look.Bold);
        canvas.Cursor(left, last);
        return last + 2;
    }

    private static void DrawLines(Canvas canvas, Session s, Lifting p, TotalItem item, int left, int row)
    {
        var width = canvas.Size.Columns - left;
        (string Text, Look Look)[] lines =
        [
            (Now(s, p), Look.Bold | Look.Next),
            (p.Doubt is { } doubt ? $"{doubt}. ENTER again writes {SetInHand.Reps(s, p)} reps" : "", Look.Bold | Look.Reverse),
            (SessionPages.Told(s) ?? "", Look.Bold),
            .. Told(s, item).Select(line => (line, Look.Plain)),
        ];
        foreach (var (line, look) in lines.Where(l => l.Text.Length > 0).SelectMany(l => LiftLines.Hung(l.Text, width).Select(t => (t, l.Look))).TakeWhile(_ => row < Frame.Bottom(canvas.Size)))
        {
            canvas.Write(left, row++, line, look);
        }
    }

    private static string Now(Session s, Lifting p) => p.Typed.Length > 0 ? $"this set: > {p.Typed}"
        : p.Reps is { } changed ? $"this set: {changed} reps"
        : $"this set: {SetInHand.Asked(s)} reps, so that form holds";

    private static IEnumerable<string> Told(Session s, TotalItem item)
    {
        var shares = s.Place.Work(item.Slot).ToList();
        yield return shares.Count > 0 ? LiftLines.Labelled("today", Words.Row(shares))
            : SetInHand.Best(s) is { } best ? LiftLines.Labelled("best set", $"{best}; fewer now, so that the last ones are clean too")
            : LiftLines.Labelled("why", item.Asked.Why.Line);
        yield return TotalPace.Of(shares) is { } pace && pace.For(item.Total - pace.Reps) is { } more
            ? LiftLines.Labelled("pace", $"{Words.Gone(pace.Took)} since the first set, about {Words.Gone(more)} more at that")
            : "";
        yield return LastTime(s, item);
        yield return Rungs.InHand(s) is { } rung ? LiftLines.Labelled("clean", rung.Clean) : "";
        yield return LiftLines.Labelled("cue", s.Setting.Catalogue[item.Asked.Exercise].Cues.WayDown);
        yield return LiftLines.Labelled("form goes", "/ 2: another angle; the total stands");
    }

    private static string LastTime(Session s, TotalItem item) =>
        s.Setting.Before.Of(item.Asked.Exercise, item.Slot).LastOrDefault() is { } last && TotalPace.Of([.. last.Sets]) is { } pace
            ? LiftLines.Labelled("last time", $"{pace.Reps} in {pace.Sets} {(pace.Sets == 1 ? "set" : "sets")}, {Words.Gone(pace.Took)}")
            : LiftLines.Labelled("last time", "none: the first time");

    private static IReadOnlyList<KeyHint> Hints(Session s, Lifting p) =>
    [
        new(KeyTable.Pad(Verb.Accept), $"did {SetInHand.Reps(s, p)}"),
        new(KeyTable.Pad(Verb.Digit), "type reps"),
        new(KeyTable.Pad(Verb.Fewer), "one fewer"),
        p.Changed ? new(KeyTable.Pad(Verb.Menu), "as asked") : Hint.Menu,
        Hint.Undo(s),
        new(KeyTable.Pad(Verb.Other), "cue card"),
    ];
}
