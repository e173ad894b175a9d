using RackSide.Training.Loading;
using RackSide.Training.Safety;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>A set in hand: how heavy and how many in digits for the bar, what is on the sleeve, what happened last time.</summary>
internal static class LiftPage
{
    private const string State = " LIFT ";

    /// <summary>Columns for the unit right of the digits.</summary>
    private const int UnitRoom = 5;

    /// <summary>Columns of the word before a line.</summary>
    private const int Label = 11;

    public static void Draw(Canvas canvas, Session s, Lifting p)
    {
        var item = (SlotItem)s.Place.Current!;
        var margin = canvas.Size.Compact ? 0 : 1;
        SessionPages.Header(canvas, s, Words.Name(s, item).ToUpperInvariant());
        var row = DrawDigits(canvas, s, p, margin, DrawTitle(canvas, s, item, margin));
        if (!canvas.Size.Compact)
        {
            SlotList.Draw(canvas, s, row);
        }

        var left = canvas.Size.Compact ? 0 : SlotList.Width + 2;
        row = DrawSleeve(canvas, s, p, item, left, row);
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
            canvas.WriteRight(size.Columns - 1, row + 1, Rested(s));
        }
        else if (State.Length + 1 + which.Length + 1 + Rested(s).Length <= size.Columns)
        {
            canvas.WriteRight(size.Columns, row, Rested(s));
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
        if (scale.Rows == 0 || size.Rows < 12)
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

    private static int DrawSleeve(Canvas canvas, Session s, Lifting p, SlotItem item, int left, int row)
    {
        if (LoadWords.StackOf(s, item, SetInHand.Load(s, p)) is not { } stack)
        {
            return row;
        }

        var each = stack.Side.Count == 0 ? "the empty bar" : $"each side: {string.Join(" + ", stack.Side.Select(m => m.Number))}";
        canvas.Write(left, row, each, Look.Bold);
        if (left + each.Length + 10 <= canvas.Size.Columns)
        {
            canvas.WriteRight(canvas.Size.Columns - 1, row, $"bar {stack.Bar.Mass.Number}");
        }

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

        foreach (var line in Lines(s, p, item).Where(l => l.Length > 0).SelectMany(l => Hung(l, width)).TakeWhile(_ => row < bottom))
        {
            canvas.Write(left, row++, line);
        }
    }

    /// <summary>A line in as many as it needs, the later ones under its text.</summary>
    private static IEnumerable<string> Hung(string line, int width) => line.Length <= width || line.Length < Label
        ? [line]
        : Frame.Wrap(line[Label..], width - Label).Select((part, i) => (i == 0 ? line[..Label] : new string(' ', Label)) + part);

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
        yield return item is RampItem && !p.Changed ? Labelled("plates", LoadWords.Change(s, item)) : "";
        yield return item is RampItem ramp ? Labelled("ramp", Ramp(ramp)) : "";
        yield return BeforeLoading.Reminder(exercise, s.Setting.Kit) is { } safety && work.Count == 0 ? Labelled("safety", safety) : "";
        yield return Labelled("pair", Pair(s, item));
        yield return work.Count > 0 ? Labelled("today", Words.Row(work)) : Labelled("why", item.Asked.Why.Line);
        yield return Labelled("last time", LastTime(s, item));
        yield return Labelled("cue", exercise.Cues.WayDown);
    }

    private static string Labelled(string label, string text) => text.Length == 0 ? "" : label.PadRight(Label) + text;

    /// <summary>The steps of the ramp, the one in hand marked, and what they lead to.</summary>
    private static string Ramp(RampItem ramp) =>
        string.Join("  ", ramp.Asked.Ramp.Select((set, i) => $"{(i + 1 == ramp.Number ? ">" : "")}{set.Load.Number}x{set.Reps}"))
        + $"  then {ramp.Asked.Load?.Number}x{ramp.Asked.Targets[0]}";

    /// <summary>Both halves of a pair with what each asks for; empty where the slot stands alone.</summary>
    private static string Pair(Session s, SlotItem item) => item.Asked.Group is not { } group ? "" : string.Join(
        ", then ",
        s.Record.Prescriptions.Where(a => a.Group == group)
            .Select(a => $"{(a.Slot == item.Slot ? ">" : "")}{s.Setting.Catalogue[a.Exercise].ShortName.ToLowerInvariant()}{(a.Load is { Amount: > 0 } l ? $" {l.Number}" : "")} x {a.Targets[0]}"));

    private static string Rested(Session s) => s.Phase is Lifting { Rested: { Ends: { } ends } clock }
        ? $"rested {Words.Gone(ends - clock.Began)}, +{Words.Gone(s.Now - ends)}"
        : "";

    private static string LastTime(Session s, SlotItem item) =>
        s.Setting.Before.Of(item.Asked.Exercise).LastOrDefault() is { } last
            ? $"{(last.Sets[0].Set.Load is { Amount: > 0 } load ? $"{load.Number} x " : "")}{Words.Row(last.Sets)}"
            : "none: the first time";

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
