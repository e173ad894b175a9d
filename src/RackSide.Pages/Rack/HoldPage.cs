using System.Globalization;
using NodaTime;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>A hold: the seconds in digits to be read from the floor.</summary>
internal static class HoldPage
{
    public static void Draw(Canvas canvas, Session s, Holding p)
    {
        var item = (SlotItem)s.Place.Current!;
        var (size, left) = (canvas.Size, canvas.Size.Compact ? 0 : SlotList.Width + 2);
        canvas.Tells = canvas.Tells with { Typing = p.Typed.Length > 0, State = State(s, p) };
        SessionPages.Header(canvas, s, Words.Name(s, item).ToUpperInvariant());
        if (size.Big)
        {
            BigPage.Draw(canvas, ($" {State(s, p)} ", Which(s, item), Alarms.IsSeen(p.Started is null ? p.Rested : null, s.Now, size.Steady)), [Seconds(s, p)], "s", SessionPages.Told(s) ?? $"target {HoldInHand.Target(s)} s");
            Frame.Keys(canvas, Hints(s, p));
            return;
        }

        if (!size.Compact)
        {
            SlotList.Draw(canvas, s, Frame.Top(size));
            canvas.Write(left, 2, Words.Name(s, item).ToUpperInvariant(), Look.Bold);
            canvas.WriteRight(size.Columns - 1, 2, Which(s, item), Look.Bold);
        }
        var (stateRow, over) = (size.Compact ? 1 : 3, p.Started is null && Alarms.IsSeen(p.Rested, s.Now, size.Steady));
        var look = Alarms.Bar(canvas, stateRow, over, Look.Bold);
        if (size.Compact)
        {
            canvas.Write(0, 1, Which(s, item), look);
        }

        canvas.WriteRight(size.Columns - 1, stateRow, $" {State(s, p)} ", Look.Bold | Look.Reverse);
        var row = DrawSeconds(canvas, s, p, left, size.Compact ? 2 : 5);
        DrawLines(canvas, s, p, item, left, row);
        Frame.Keys(canvas, Hints(s, p));
    }

    private static string Which(Session s, SlotItem item) => item is AccumulateItem time
        ? $"{s.Place.Held(time.Slot)} of {time.Total} s done"
        : Words.Which(item);

    private static string State(Session s, Holding p) => HoldInHand.Elapsed(s, p) switch
    {
        null => "READY",
        { } past when past < Duration.Zero => "GET SET",
        { } past when HoldInHand.IsHeadDown(s) && past.TotalSeconds >= HoldInHand.Target(s) - HoldInHand.InHand => "COME DOWN",
        { } past when past.TotalSeconds >= HoldInHand.Target(s) => "TARGET MET",
        _ => "HOLD",
    };

    private static string Seconds(Session s, Holding p) => (p.Typed, HoldInHand.Elapsed(s, p)) switch
    {
        ({ Length: > 0 }, _) => p.Typed,
        (_, null) => Text(HoldInHand.Target(s)),
        (_, { } past) when past < Duration.Zero => Text((int)Math.Ceiling(-past.TotalSeconds)),
        (_, { } past) => Text((int)Math.Floor(past.TotalSeconds)),
    };

    private static int DrawSeconds(Canvas canvas, Session s, Holding p, int left, int row)
    {
        var text = Seconds(s, p);
        var room = canvas.Size.Columns - left - 4;
        var tall = BigDigits.Tallest(text, room, Math.Max(BigDigits.Dots, (canvas.Size.Rows * 45 / 100) - 1));
        if (tall.Rows == 0 || !canvas.Size.HasDigits(11))
        {
            canvas.Write(left, row, $"{text} s", Look.Bold);
            canvas.Cursor(left, row);
            return row + 1;
        }

        var column = left + ((room - BigDigits.Width(text, tall.Columns)) / 2);
        var end = BigDigits.DrawTall(canvas, column, row, text, tall, Look.Bold);
        canvas.Write(end, row + tall.Rows - 1, "s");
        canvas.Cursor(column, row + tall.Rows - 1);
        return row + tall.Rows + 1;
    }

    private static void DrawLines(Canvas canvas, Session s, Holding p, SlotItem item, int left, int row)
    {
        var (size, bottom) = (canvas.Size, Frame.Bottom(canvas.Size));
        var width = size.Columns - left - 2;
        var held = Math.Clamp((HoldInHand.Elapsed(s, p) ?? Duration.Zero).TotalSeconds / HoldInHand.Target(s), 0, 1);
        canvas.Fill(left, row, (int)(width * held), '█', Look.Now);
        canvas.Fill(left + (int)(width * held), row, width - (int)(width * held), '░', Look.Next);
        var exercise = s.Setting.Catalogue[item.Asked.Exercise];
        var work = s.Place.Work(item.Slot).ToList();
        var last = s.Setting.Before.Of(item.Asked.Exercise).LastOrDefault();
        string[] lines =
        [
            SessionPages.Told(s) ?? "",
            $"{Target(s, item)}{(work.Count > 0 ? $"   so far {Words.Row(work)}" : "")}",
            last is null ? item.Asked.Why.Line : $"last time {Words.Row(last.Sets)}",
            PlanLines.Advice(item.Asked) ?? "",
            Rungs.InHand(s) is { } rung ? $"clean: {rung.Clean}" : exercise.Cues.WayDown,
            work.Count == 0 ? Rungs.InHand(s)?.Caution ?? "" : "",
            exercise.Inverted ? exercise.Cues.StopIf : "",
        ];
        foreach (var (line, i) in lines.Where(l => l.Length > 0).Select((l, i) => (l, i)).Where(l => row + 1 + l.i < bottom))
        {
            canvas.Write(left, row + 1 + i, Frame.Fit(line, size.Columns - left));
        }
    }

    private static string Target(Session s, SlotItem item) => item is AccumulateItem
        ? $"{HoldInHand.Target(s)} s left, in as many goes as it takes"
        : $"target {HoldInHand.Target(s)} s{(item.Asked.EachSide ? " each side" : "")}";

    private static IReadOnlyList<KeyHint> Hints(Session s, Holding p) =>
    [
        new(KeyTable.Pad(Verb.Accept), p switch
        {
            { Typed.Length: > 0 } => $"write {p.Typed} s",
            { Started: null } => $"start in {(int)s.Setting.LeadIn.TotalSeconds} s",
            _ when HoldInHand.Seconds(s, p) is { } seconds => $"down: write {seconds} s",
            _ => "not begun yet",
        }),
        p.Started is null ? new(KeyTable.Pad(Verb.Digit), "type seconds", "type s") : new("0", "false start"),
        new(KeyTable.Pad(Verb.Other), "cue card"),
        p.Typed.Length > 0 ? new(KeyTable.Pad(Verb.Menu), "clear") : Hint.Menu,
        Hint.Undo(s),
    ];

    private static string Text(int seconds) => seconds.ToString(CultureInfo.InvariantCulture);
}
