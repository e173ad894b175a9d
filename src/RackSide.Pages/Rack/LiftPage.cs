using RackSide.Training.Loading;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>A set in hand: how heavy and how many in digits for the bar, what is on the sleeve, what happened last time.</summary>
internal static class LiftPage
{
    private const string State = " LIFT ";

    /// <summary>Columns for the unit right of the digits.</summary>
    private const int UnitRoom = 5;

    public static void Draw(Canvas canvas, Session s, Lifting p)
    {
        var item = (SlotItem)s.Place.Current!;
        var margin = canvas.Size.Compact ? 0 : 1;
        SessionPages.Header(canvas, s, Words.Name(s, item).ToUpperInvariant());
        canvas.Tells = canvas.Tells with { Typing = p.Typed.Length > 0 };
        if (canvas.Size.Big)
        {
            DrawBig(canvas, s, p, item);
            return;
        }

        var (row, gap) = DrawDigits(canvas, s, p, margin, DrawTitle(canvas, s, p, item, margin));
        var left = canvas.Size.Compact ? 0 : SlotList.Width + 2;
        var room = Frame.Bottom(canvas.Size) - row - (BarInHand.For(s, SetInHand.Load(s, p)) is null ? 0 : 1);
        IReadOnlyList<string> lines = [.. LiftLines.Of(s, p, item, canvas.Size.Columns - left)];
        if (canvas.Size.Compact && lines.Count + gap > room)
        {
            // What can hurt and why this load are both to be read, so the blank row goes, and then the column of words.
            gap = 0;
            lines = lines.Count > room ? [.. LiftLines.Tight(s, p, item, canvas.Size.Columns)] : lines;
        }

        row += gap;
        if (!canvas.Size.Compact)
        {
            SlotList.Draw(canvas, s, row);
        }

        DrawLines(canvas, s, p, lines, left, DrawSleeve(canvas, s, p, left, row));
        Frame.Keys(canvas, Hints(s, p, Hint.Undo(s)));
    }

    private static void DrawBig(Canvas canvas, Session s, Lifting p, SlotItem item)
    {
        var (load, reps) = (SetInHand.Load(s, p) is { Amount: > 0 } some ? some.Number : null, SetInHand.Reps(s, p));
        var line = p.Doubt is { } doubt ? Doubted(doubt, s, p)
            : SessionPages.Told(s) is { } told ? told
            : BarInHand.For(s, SetInHand.Load(s, p)) is { } stack ? OnSleeve(stack)
            : LiftLines.Rested(s);
        BigPage.Draw(canvas, (State, Which(s, item), Alarms.IsSeen(p.Rested, s.Now, canvas.Size.Steady)), load is null ? [$"{reps}"] : [load, $"x {reps}"], load is null ? "reps" : SetInHand.Load(s, p)!.Value.Symbol, line);
        Frame.Keys(canvas, Hints(s, p, Hint.Undo(s)));
    }

    private static string Which(Session s, SlotItem item) =>
        item is TotalItem total ? $"{s.Place.Counted(total.Slot)} of {total.Total} done" : Words.Which(item);

    private static int DrawTitle(Canvas canvas, Session s, Lifting p, SlotItem item, int left)
    {
        var (size, row) = (canvas.Size, Frame.Top(canvas.Size));
        var which = Which(s, item);
        var look = Alarms.Bar(canvas, row, Alarms.IsSeen(p.Rested, s.Now, size.Steady), Look.Bold);
        canvas.Write(left, row, State, Look.Bold | Look.Reverse);
        canvas.Write(left + State.Length + 1, row, size.Compact ? which : Words.Name(s, item).ToUpperInvariant(), look);
        if (!size.Compact)
        {
            canvas.WriteRight(size.Columns - 1, row, which, look);
            canvas.WriteRight(size.Columns - 1, row + 1, LiftLines.Rested(s));
        }
        else if (State.Length + 1 + which.Length + 1 + LiftLines.Rested(s).Length <= size.Columns)
        {
            canvas.WriteRight(size.Columns, row, LiftLines.Rested(s), look & ~Look.Bold);
        }

        return row + (size.Compact ? 1 : 2);
    }

    private static string Digits(Session s, Lifting p) => SetInHand.Load(s, p) is { Amount: > 0 } load
        ? $"{load.Number} x {SetInHand.Reps(s, p)}"
        : $"{SetInHand.Reps(s, p)}";

    /// <summary>Gives the row after them, and how many blank ones look well there.</summary>
    private static (int Row, int Gap) DrawDigits(Canvas canvas, Session s, Lifting p, int left, int row)
    {
        var size = canvas.Size;
        var text = Digits(s, p);
        var scale = BigDigits.Scale(text, size.Columns - left - (size.Compact ? 0 : UnitRoom), Math.Max(BigDigits.Dots, size.Rows * 40 / 100));
        if (scale.Rows == 0 || !size.HasDigits(12))
        {
            canvas.Write(left, row, Shown(s, p), Look.Bold);
            canvas.Cursor(left, row);
            return (row + 1, 0);
        }

        var (end, last) = (BigDigits.Draw(canvas, left, row, text, scale, Look.Bold), row + (BigDigits.Dots * scale.Rows) - 1);
        var unit = SetInHand.Load(s, p) is { Amount: > 0 } load ? load.Symbol : "reps";
        var beside = end + unit.Length <= size.Columns;
        canvas.Write(beside ? end : size.Columns - unit.Length, beside ? last : last + 1, unit);
        canvas.Cursor(left, last);
        return beside ? (last + 1, 1) : (last + 2, 0);
    }

    private static int DrawSleeve(Canvas canvas, Session s, Lifting p, int left, int row)
    {
        if (BarInHand.For(s, SetInHand.Load(s, p)) is not { } stack)
        {
            return row;
        }

        var each = OnSleeve(stack);
        canvas.Write(left, row, each, Look.Bold);
        if (left + each.Length + Bar(stack).Length + 4 <= canvas.Size.Columns)
        {
            canvas.WriteRight(canvas.Size.Columns - 1, row, Bar(stack));
        }

        if (stack.Side.Count > 0 && !canvas.Size.Plain && Frame.Bottom(canvas.Size) - row >= SleevePicture.Rows + 5)
        {
            SleevePicture.Draw(canvas, left, row + 1, stack);
            return row + SleevePicture.Rows + 2;
        }

        return row + 1;
    }

    private static string OnSleeve(BarStack stack) =>
        stack.Side.Count == 0 ? "the empty bar" : $"each side: {string.Join(" + ", stack.Side.Select(m => stack.NamesUnits ? m.ToString() : m.Number))}";

    private static string Doubted(string doubt, Session s, Lifting p) => $"{doubt}. ENTER again writes {Shown(s, p)}";

    /// <summary>The bar as it is picked up: <c>bar 20</c>, <c>bar 20 + collars 2 x 2.5</c>.</summary>
    private static string Bar(BarStack stack) => $"bar {(stack.NamesUnits ? stack.Bar.Bare.ToString() : stack.Bar.Bare.Number)}"
        + (stack.Bar.Collar is { } collar ? $" + collars 2 x {(stack.NamesUnits ? collar.ToString() : collar.Number)}" : "");

    private static void DrawLines(Canvas canvas, Session s, Lifting p, IReadOnlyList<string> lines, int left, int row)
    {
        var width = canvas.Size.Columns - left;
        var bottom = Frame.Bottom(canvas.Size);
        if (SessionPages.Told(s) is { } told)
        {
            bottom = WriteUp(canvas, left, bottom, Frame.Wrap(told, width), Look.Bold);
        }

        if (p.Doubt is { } doubt)
        {
            bottom = WriteUp(canvas, left, bottom, Frame.Wrap(Doubted(doubt, s, p), width), Look.Bold | Look.Reverse);
        }

        foreach (var line in lines.TakeWhile(_ => row < bottom))
        {
            canvas.Write(left, row++, line);
        }
    }

    private static int WriteUp(Canvas canvas, int left, int bottom, IReadOnlyList<string> lines, Look look)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            canvas.Write(left, bottom - lines.Count + i, lines[i], look);
        }

        return bottom - lines.Count;
    }

    private static string Shown(Session s, Lifting p) => SetInHand.Load(s, p) is { Amount: > 0 } load
        ? $"{load} x {SetInHand.Reps(s, p)}"
        : $"{SetInHand.Reps(s, p)} reps";

    internal static IReadOnlyList<KeyHint> Hints(Session s, Lifting p, KeyHint undo) =>
    [
        new(KeyTable.Pad(Verb.Accept), $"did {SetInHand.Reps(s, p)}"),
        new(KeyTable.Pad(Verb.Digit), p.Field == Field.Load ? "type weight" : "type reps"),
        p.Field == Field.Load ? new("+ -", "heavier, lighter", "step") : new(KeyTable.Pad(Verb.Fewer), "one fewer"),
        p.Changed ? new(KeyTable.Pad(Verb.Menu), "as asked") : Hint.Menu,
        p.Field == Field.Load ? new(KeyTable.Pad(Verb.Point), "decimal mark")
            : undo,
        SetInHand.Load(s, p) is null ? new(KeyTable.Pad(Verb.Other), "cue card")
            : new(KeyTable.Pad(Verb.Other), p.Field == Field.Load ? "back to reps" : "other weight"),
    ];
}
