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
        var row = DrawDigits(canvas, s, p, margin, DrawTitle(canvas, s, item, margin));
        if (!canvas.Size.Compact)
        {
            SlotList.Draw(canvas, s, row);
        }

        var left = canvas.Size.Compact ? 0 : SlotList.Width + 2;
        row = DrawSleeve(canvas, s, p, left, row);
        DrawLines(canvas, s, p, item, left, row);
        Frame.Keys(canvas, Hints(s, p));
    }

    private static int DrawTitle(Canvas canvas, Session s, SlotItem item, int left)
    {
        var (size, row) = (canvas.Size, Frame.Top(canvas.Size));
        var which = item is TotalItem total ? $"{s.Place.Counted(total.Slot)} of {total.Total} done" : Words.Which(item);
        canvas.Write(left, row, State, Look.Bold | Look.Reverse);
        canvas.Write(left + State.Length + 1, row, size.Compact ? which : Words.Name(s, item).ToUpperInvariant(), Look.Bold | Look.Now);
        if (!size.Compact)
        {
            canvas.WriteRight(size.Columns - 1, row, which, Look.Bold);
            canvas.WriteRight(size.Columns - 1, row + 1, LiftLines.Rested(s));
        }
        else if (State.Length + 1 + which.Length + 1 + LiftLines.Rested(s).Length <= size.Columns)
        {
            canvas.WriteRight(size.Columns, row, LiftLines.Rested(s));
        }

        return row + (size.Compact ? 1 : 2);
    }

    private static string Digits(Session s, Lifting p) => SetInHand.Load(s, p) is { Amount: > 0 } load
        ? $"{load.Number} x {SetInHand.Reps(s, p)}"
        : $"{SetInHand.Reps(s, p)}";

    private static int DrawDigits(Canvas canvas, Session s, Lifting p, int left, int row)
    {
        var size = canvas.Size;
        var text = Digits(s, p);
        var scale = BigDigits.Scale(text, size.Columns - left - (size.Compact ? 0 : UnitRoom), Math.Max(BigDigits.Dots, size.Rows * 40 / 100));
        if (scale.Rows == 0 || !size.HasDigits(12))
        {
            canvas.Write(left, row, Shown(s, p), Look.Bold);
            canvas.Cursor(left, row);
            return row + 1;
        }

        var (end, last) = (BigDigits.Draw(canvas, left, row, text, scale, Look.Bold), row + (BigDigits.Dots * scale.Rows) - 1);
        var unit = SetInHand.Load(s, p) is { Amount: > 0 } load ? load.Symbol : "reps";
        var beside = end + unit.Length <= size.Columns;
        canvas.Write(beside ? end : size.Columns - unit.Length, beside ? last : last + 1, unit);
        canvas.Cursor(left, last);
        return last + 2;
    }

    private static int DrawSleeve(Canvas canvas, Session s, Lifting p, int left, int row)
    {
        if (BarInHand.For(s, SetInHand.Load(s, p)) is not { } stack)
        {
            return row;
        }

        var each = stack.Side.Count == 0 ? "the empty bar" : $"each side: {string.Join(" + ", stack.Side.Select(m => stack.NamesUnits ? m.ToString() : m.Number))}";
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

    /// <summary>The bar as it is picked up: <c>bar 20</c>, <c>bar 20 + collars 2 x 2.5</c>.</summary>
    private static string Bar(BarStack stack) => $"bar {(stack.NamesUnits ? stack.Bar.Bare.ToString() : stack.Bar.Bare.Number)}"
        + (stack.Bar.Collar is { } collar ? $" + collars 2 x {(stack.NamesUnits ? collar.ToString() : collar.Number)}" : "");

    private static void DrawLines(Canvas canvas, Session s, Lifting p, SlotItem item, int left, int row)
    {
        var width = canvas.Size.Columns - left;
        var bottom = Frame.Bottom(canvas.Size);
        if (SessionPages.Told(s) is { } told)
        {
            bottom = WriteUp(canvas, left, bottom, Frame.Wrap(told, width), Look.Bold);
        }

        if (p.Doubt is { } doubt)
        {
            bottom = WriteUp(canvas, left, bottom, Frame.Wrap($"{doubt}. ENTER again writes {Shown(s, p)}", width), Look.Bold | Look.Reverse);
        }

        foreach (var line in LiftLines.Of(s, p, item, width).TakeWhile(_ => row < bottom))
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

    private static IReadOnlyList<KeyHint> Hints(Session s, Lifting p) =>
    [
        new(KeyTable.Pad(Verb.Accept), $"did {SetInHand.Reps(s, p)}"),
        new(KeyTable.Pad(Verb.Digit), p.Field == Field.Load ? "type weight" : "type reps"),
        p.Field == Field.Load ? new("+ -", "heavier, lighter", "step") : new(KeyTable.Pad(Verb.Fewer), "one fewer"),
        p.Changed ? new(KeyTable.Pad(Verb.Menu), "as asked") : Hint.Menu,
        p.Field == Field.Load ? new(KeyTable.Pad(Verb.Point), "decimal mark")
            : Hint.Undo(s),
        SetInHand.Load(s, p) is null ? new(KeyTable.Pad(Verb.Other), "cue card")
            : new(KeyTable.Pad(Verb.Other), p.Field == Field.Load ? "back to reps" : "other weight"),
    ];
}
