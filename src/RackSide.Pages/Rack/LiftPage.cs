using RackSide.Training.Loading;
using RackSide.Training.Safety;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>A set in hand: how heavy and how many in digits for the bar, what is on the sleeve, what happened last time.</summary>
internal static class LiftPage
{
    public static void Draw(Canvas canvas, Session s, Lifting p)
    {
        var item = (SlotItem)s.Place.Current!;
        SessionPages.Header(canvas, s, Words.Name(s, item).ToUpperInvariant());
        var left = canvas.Size.Compact ? 0 : SlotList.Width + 2;
        if (!canvas.Size.Compact)
        {
            SlotList.Draw(canvas, s);
        }

        var row = DrawTitle(canvas, s, item, left);
        row = DrawDigits(canvas, s, p, item, left, row);
        row = DrawSleeve(canvas, s, p, item, left, row);
        DrawLines(canvas, s, p, item, left, row);
        Frame.Keys(canvas, Hints(s, p, item));
    }

    private static int DrawTitle(Canvas canvas, Session s, SlotItem item, int left)
    {
        var which = item is TotalItem total ? $"{s.Place.Counted(total.Slot)} of {total.Total} done" : Words.Which(item);
        if (canvas.Size.Compact)
        {
            canvas.Write(0, 1, which, Look.Bold | Look.Now);
            canvas.WriteRight(canvas.Size.Columns, 1, RestedFor(s) ?? "");
            return 2;
        }

        canvas.Write(left, 2, Words.Name(s, item).ToUpperInvariant(), Look.Bold | Look.Now);
        canvas.WriteRight(canvas.Size.Columns - 1, 2, which, Look.Bold);
        return 4;
    }

    private static int DrawDigits(Canvas canvas, Session s, Lifting p, SlotItem item, int left, int row)
    {
        var size = canvas.Size;
        var (load, reps) = (SetInHand.Load(s, p), SetInHand.Reps(s, p));
        var text = load is { Amount: > 0 } l ? $"{l.Number} x {reps}" : $"{reps}";
        var room = size.Columns - left - (size.Compact ? 0 : 5);
        var scale = BigDigits.Scale(text, room, Math.Max(BigDigits.Dots, (size.Rows * 45 / 100) - (size.Compact ? 1 : 3)));
        if (scale.Rows == 0 || size.Rows < 12)
        {
            canvas.Write(left, row, load is { Amount: > 0 } k ? $"{k} x {reps}" : $"{reps} reps", Look.Bold);
            canvas.Cursor(left, row);
            return row + 1;
        }

        var end = BigDigits.Draw(canvas, left, row, text, scale, Look.Bold);
        var unit = load is { Amount: > 0 } u ? u.Symbol : "reps";
        canvas.Write(Math.Min(end, size.Columns - unit.Length), row + (BigDigits.Dots * scale.Rows) - 1, unit);
        canvas.Cursor(left, row + (BigDigits.Dots * scale.Rows) - 1);
        return row + (BigDigits.Dots * scale.Rows) + 1;
    }

    private static int DrawSleeve(Canvas canvas, Session s, Lifting p, SlotItem item, int left, int row)
    {
        if (LoadWords.StackOf(s, item, SetInHand.Load(s, p)) is not { } stack)
        {
            return row;
        }

        var each = stack.Side.Count == 0 ? "the empty bar" : $"each side: {string.Join(" + ", stack.Side.Select(m => m.Number))}";
        canvas.Write(left, row, each, Look.Bold);
        canvas.WriteRight(canvas.Size.Columns - 1, row, $"bar {stack.Bar.Mass.Number}");
        if (stack.Side.Count > 0 && Frame.Bottom(canvas.Size) - row >= SleevePicture.Rows + 5)
        {
            SleevePicture.Draw(canvas, left, row + 1, stack);
            return row + SleevePicture.Rows + 2;
        }

        return row + 1;
    }

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

        foreach (var line in Lines(s, p, item).Where(l => l.Length > 0).TakeWhile(_ => row < bottom))
        {
            canvas.Write(left, row++, Frame.Fit(line, width));
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

    private static IEnumerable<string> Lines(Session s, Lifting p, SlotItem item)
    {
        var exercise = s.Setting.Catalogue[item.Asked.Exercise];
        var work = s.Place.Work(item.Slot).ToList();
        yield return p.Field == Field.Load ? "changing the weight; * goes back to reps" : "";
        yield return Rested(s);
        yield return work.Count > 0 ? $"this exercise   {Words.Row(work)}" : $"why             {item.Asked.Why.Line}";
        yield return LastTime(s, item);
        yield return BeforeLoading.Reminder(exercise, s.Setting.Kit) is { } safety && work.Count == 0 ? safety : $"cue             {exercise.Cues.WayDown}";
    }

    private static string Rested(Session s) => RestedFor(s) ?? "";

    private static string? RestedFor(Session s) => s.Phase is Lifting { Rested: { Ends: { } ends } clock }
        ? $"rested {Words.Gone(ends - clock.Began)}, +{Words.Gone(s.Now - ends)}"
        : null;

    private static string LastTime(Session s, SlotItem item) =>
        s.Setting.Before.Of(item.Asked.Exercise).LastOrDefault() is { } last
            ? $"last time       {(last.Sets[0].Set.Load is { Amount: > 0 } load ? $"{load.Number} x " : "")}{Words.Row(last.Sets)}"
            : "last time       none: the first time";

    private static string Shown(Session s, Lifting p) => SetInHand.Load(s, p) is { Amount: > 0 } load
        ? $"{load} x {SetInHand.Reps(s, p)}"
        : $"{SetInHand.Reps(s, p)} reps";

    private static IReadOnlyList<KeyHint> Hints(Session s, Lifting p, SlotItem item) =>
    [
        new(KeyTable.Pad(Verb.Accept), $"did {SetInHand.Reps(s, p)}"),
        new(KeyTable.Pad(Verb.Digit), p.Field == Field.Load ? "type weight" : "type reps"),
        p.Field == Field.Load ? new("+ -", "heavier, lighter") : new(KeyTable.Pad(Verb.Fewer), "one fewer"),
        p.Changed ? new(KeyTable.Pad(Verb.Menu), "as asked") : new(KeyTable.Pad(Verb.Menu), "menu, stop signs"),
        p.Field == Field.Load ? new(KeyTable.Pad(Verb.Point), "decimal mark")
            : new(KeyTable.Pad(Verb.Point), Undoing.Next(s) is { } undo ? $"undo: {undo}" : "nothing to undo"),
        SetInHand.Load(s, p) is null ? new(KeyTable.Pad(Verb.Other), "cue card")
            : new(KeyTable.Pad(Verb.Other), p.Field == Field.Load ? "back to reps" : "other weight"),
    ];
}
