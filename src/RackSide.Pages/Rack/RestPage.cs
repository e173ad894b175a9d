using RackSide.Training.History;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>Rest: the clock in digits for across the room, what was written, what comes, what to change on the bar.</summary>
internal static class RestPage
{
    public static void Draw(Canvas canvas, Session s, Resting p)
    {
        var (size, margin) = (canvas.Size, canvas.Size.Compact ? 0 : 1);
        canvas.Tells = canvas.Tells with { Left = p.Clock.IsHeld ? null : p.Clock.Left(s.Now) };
        SessionPages.Header(canvas, s, Done(s));
        var top = Frame.Top(size);
        if (size.Big)
        {
            BigPage.Draw(canvas, (State(s, p), Written(s), p.Clock.GetReady(s.Now)), [Words.Clock(p.Clock.Left(s.Now))], "", SessionPages.Told(s) ?? Then(s));
            Frame.Keys(canvas, Hints(s, p, Hint.Undo(s), FormHint(s)));
            return;
        }

        var look = Alarms.Bar(canvas, top, p.Clock.GetReady(s.Now), Look.Plain);
        canvas.Write(margin, top, State(s, p), Look.Bold | Look.Reverse);
        canvas.WriteRight(size.Columns - margin, top, Frame.Fit(Written(s), size.Columns - State(s, p).Length - 2), look);
        var row = DrawClock(canvas, s, p, top + (size.Rows < 18 ? 1 : 2));
        row = DrawBar(canvas, s, p, row);
        DrawNext(canvas, s, row);
        Frame.Keys(canvas, Hints(s, p, Hint.Undo(s), FormHint(s)));
    }

    private static string State(Session s, Resting p) => p.Clock.IsHeld ? " HELD "
        : p.Clock.GetReady(s.Now) ? " GET READY "
        : Rests.IsChangeOver(s.Place, s.LastSet!.Set) ? " CHANGE OVER " : " REST ";

    private static string Done(Session s) => s.LastSet is { } last && s.Setting.Catalogue.Find(last.Set.Exercise) is { } exercise
        ? $"{exercise.ShortName.ToLowerInvariant()}, {s.Place.Work(last.Set.Slot).Count()} done"
        : "";

    /// <summary>What became of the set just done: the world's answer, not the key's.</summary>
    internal static string Written(Session s)
    {
        if (s.WriteTrouble is not null)
        {
            return "not on disk yet";
        }

        var set = s.LastSet!.Set;
        var name = set.Kind switch { SetKind.WarmUp => "warm-up", SetKind.Hold or SetKind.HeldShare => "hold", _ => "set" };
        return s.Unwritten.Contains(set.Id) ? "writing ..." : $"{name} {set.Number} written: {Words.Set(set)}";
    }

    private static int DrawClock(Canvas canvas, Session s, Resting p, int row)
    {
        var (size, text) = (canvas.Size, Words.Clock(p.Clock.Left(s.Now)));
        var scale = BigDigits.Scale(text, size.Columns - 2, Math.Max(BigDigits.Dots, size.Rows * 45 / 100));
        if (scale.Rows == 0 || !size.HasDigits(11))
        {
            canvas.Write(0, row, text, Look.Bold);
            canvas.Cursor(0, row);
            return row + 1;
        }

        var column = (size.Columns - BigDigits.Width(text, scale.Columns)) / 2;
        BigDigits.Draw(canvas, column, row, text, scale, Look.Bold);
        canvas.Cursor(column, row + (BigDigits.Dots * scale.Rows) - 1);
        return row + (BigDigits.Dots * scale.Rows) + (size.Rows < 18 ? 0 : 1);
    }

    private static int DrawBar(Canvas canvas, Session s, Resting p, int row)
    {
        if (canvas.Size.Rows < 14)
        {
            return row;
        }

        var (margin, length) = (canvas.Size.Compact ? 0 : 2, p.Clock.Length(s.Now));
        var width = canvas.Size.Columns - (2 * margin);
        var gone = length.TotalSeconds <= 0 ? width : (int)(width * (1 - (p.Clock.Left(s.Now).TotalSeconds / length.TotalSeconds)));
        canvas.Fill(margin, row, gone, '█', Look.Now);
        canvas.Fill(margin + gone, row, width - gone, '░', Look.Next);
        return row + (canvas.Size.Rows < 18 ? 1 : 2);
    }

    private static void DrawNext(Canvas canvas, Session s, int row)
    {
        var (size, margin) = (canvas.Size, canvas.Size.Compact ? 0 : 2);
        var next = s.Place.Current!;
        var bottom = Frame.Bottom(size);
        var which = next is TotalItem total ? $"{s.Place.Counted(total.Slot)} of {total.Total} done"
            : next is AccumulateItem time ? $"{s.Place.Held(time.Slot)} of {time.Total} s done"
            : Words.Which(next) is var words && words.Length + 3 + Asks(s, next).Length <= size.Columns ? $"{words}   {Asks(s, next)}"
            : $"{Asks(s, next)}   {words}";
        List<string> lines = [$"THEN  {Words.Name(s, next).ToUpperInvariant()}  {which}", LoadWords.Change(s, next), SessionPages.Told(s) ?? ""];
        lines = [.. lines.Where(l => l.Length > 0)];
        if (size.Compact && lines[0].Length > size.Columns)
        {
            lines = [$"THEN  {Words.Name(s, next).ToUpperInvariant()}", which, .. lines.Skip(1)];
        }

        List<string> advice = [.. Frame.Wrap(Advice(next), size.Columns - margin).Where(l => l.Length > 0)];
        lines.AddRange(Frame.Within(advice, bottom - row - lines.Count, size.Columns - margin));
        foreach (var (line, i) in lines.Select((l, i) => (l, i)).Where(l => row + l.i < bottom))
        {
            canvas.Write(margin, row + i, Frame.Fit(line, size.Columns - margin), i == 0 ? Look.Bold | Look.Next : Look.Plain);
        }
    }

    /// <summary>What comes, in one line.</summary>
    private static string Then(Session s) =>
        $"THEN {Words.Name(s, s.Place.Current!)}  {Asks(s, s.Place.Current!)}  {LoadWords.Change(s, s.Place.Current!)}".TrimEnd();

    /// <summary>What is offered beside the load: a longer rest belongs here more than anywhere.</summary>
    private static string Advice(AgendaItem next) => next is SlotItem item ? PlanLines.Advice(item.Asked) ?? "" : "";

    /// <summary>The load the next set will really have, also where the lifter changed it in this slot.</summary>
    private static string Asks(Session s, AgendaItem next) =>
        next is SetItem set and not HoldItem && SetInHand.AskedLoad(s) is { Amount: > 0 } load ? $"{load} x {set.Target}" : Words.Asks(next);

    private static KeyHint FormHint(Session s) => new("1", s.LastSet is { FormSlipped: true } ? "form held" : "form slipped");

    internal static IReadOnlyList<KeyHint> Hints(Session s, Resting p, KeyHint undo, KeyHint last) =>
    [
        new(KeyTable.Pad(Verb.Accept), s.Place.Current is HoldItem or AccumulateItem ? "get ready now" : "lift now"),
        new("+ -", "15 s more, less", "15 s"),
        new("0", p.Clock.IsHeld ? "go on" : "hold the clock", p.Clock.IsHeld ? "go on" : "hold"),
        Hint.Menu,
        undo,
        last,
    ];
}
