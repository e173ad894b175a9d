using RackSide.Pages.Rack;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Sharing;

/// <summary>
/// A set or a rest of the one in turn: the name and the load or the clock in letters for across the room, what to change
/// from the other's stack to this one's, and the other's rest beside it.
/// </summary>
internal static class SharedLiftPage
{
    private const int UnitRoom = 5;

    public static Page Draw(TwoOnOneBar b, PageSize size)
    {
        var canvas = new Canvas(size)
        {
            Tells = new() { Typing = b.InTurn.Phase is Lifting { Typed.Length: > 0 }, Left = b.InTurn.Phase is Resting { Clock: { IsHeld: false } clock } ? clock.Left(b.InTurn.Now) : null },
        };
        var (s, margin, lines) = (b.InTurn, size.Compact ? 0 : 1, Lines(b, size));
        Header(canvas, b);
        var row = DrawName(canvas, b, margin, DrawTitle(canvas, b, margin));
        var change = Change(s);
        if (size.Compact && change.Length > 0 && row < Frame.Bottom(size))
        {
            canvas.Write(margin, row++, Frame.Fit(change, size.Columns), Look.Bold);
        }

        row = DrawDigits(canvas, b, margin, row, Frame.Bottom(size) - row - (Urgent(b) is null ? 0 : 2));
        if (!size.Compact)
        {
            row = DrawBar(canvas, s, margin, row, change);
        }

        DrawLines(canvas, b, lines, margin, row);
        Frame.Keys(canvas, Hints(b));
        return canvas.Done();
    }

    /// <summary>On a compact page the top line says what is in hand and how the other stands; there is no room elsewhere.</summary>
    private static void Header(Canvas canvas, TwoOnOneBar b)
    {
        if (!canvas.Size.Compact)
        {
            SessionPages.Header(canvas, b.InTurn);
            return;
        }

        var (state, other) = (State(b.InTurn), SharedWords.Other(b));
        var left = state + (b.InTurn.Phase is Resting ? $"then {Asks(b.InTurn)}" : Which(b.InTurn));
        Frame.Header(canvas, canvas.Size.HasDigits(14) ? Frame.Fit(left, canvas.Size.Columns - other.Length - 2) : left, other);
        canvas.Write(0, 0, state, Look.Bold | Look.Reverse);
    }

    private static int DrawTitle(Canvas canvas, TwoOnOneBar b, int margin)
    {
        var (size, row, s) = (canvas.Size, Frame.Top(canvas.Size), b.InTurn);
        if (size.Compact)
        {
            return row;
        }

        var state = State(s);
        canvas.Write(margin, row, state, Look.Bold | Look.Reverse);
        canvas.Write(margin + state.Length + 1, row, Frame.Fit($"{b.Name(b.Turn).ToUpperInvariant()}: {Words.Name(s, s.Place.Current!).ToUpperInvariant()}  {Which(s)}", size.Columns - state.Length - 3), Look.Bold | Look.Now);
        canvas.WriteRight(size.Columns - 1, row + 1, Frame.Fit(SharedWords.Written(b), size.Columns - 2));
        return row + 2;
    }

    private static int DrawName(Canvas canvas, TwoOnOneBar b, int margin, int row)
    {
        var (size, name) = (canvas.Size, b.Name(b.Turn));
        var scale = BigLetters.Scale(name, size.Columns - margin, Math.Max(BigLetters.Dots, size.Rows / 4));
        if (scale.Rows == 0 || !size.HasDigits(14))
        {
            canvas.Write(margin, row, $" {name.ToUpperInvariant()} ", Look.Bold | Look.Reverse);
            return row + 1;
        }

        BigLetters.Draw(canvas, margin, row, name, scale, Look.Bold | Look.Now);
        return row + (BigLetters.Dots * scale.Rows) + (size.Compact ? 0 : 1);
    }

    /// <summary>The load and the reps, or the clock of the rest; beside it the other's clock where there is room.</summary>
    private static int DrawDigits(Canvas canvas, TwoOnOneBar b, int margin, int row, int rows)
    {
        var (size, s) = (canvas.Size, b.InTurn);
        var (text, unit) = s.Phase is Resting { Clock: var clock } ? (Words.Clock(clock.Left(s.Now)), "") : (Digits(s, (Lifting)s.Phase), Unit(s, (Lifting)s.Phase));
        var room = Math.Min(rows, Math.Max(BigDigits.Dots, size.Rows * 30 / 100));
        var others = size.Compact ? null : SharedWords.OthersClock(b);
        var (scale, beside) = Scaled(text, others, size.Columns - margin - UnitRoom, room);
        if (scale.Rows == 0 || !size.HasDigits(14))
        {
            canvas.Write(margin, row, s.Phase is Resting ? text : Shown(s, (Lifting)s.Phase), Look.Bold);
            canvas.Cursor(margin, row);
            return row + 1;
        }

        var last = row + (BigDigits.Dots * scale.Rows) - 1;
        var end = BigDigits.Draw(canvas, margin, row, text, scale, Look.Bold);
        canvas.Write(end, last, unit);
        canvas.Cursor(margin, last);
        if (beside)
        {
            DrawOthers(canvas, b, others!, row);
        }
        else if (!size.Compact)
        {
            canvas.WriteRight(size.Columns - 1, last + 1, SharedWords.Other(b));
        }

        return last + (size.Compact ? 1 : 2);
    }

    /// <summary>As large as without the other's clock, or else without it: the other's is said in words anyhow.</summary>
    private static ((int Rows, int Columns) Scale, bool Beside) Scaled(string text, string? others, int columns, int rows)
    {
        var alone = BigDigits.Scale(text, columns, rows);
        var both = others is null ? (0, 0) : BigDigits.Scale(text, columns - BigDigits.Width(others, 2) - 2, rows);
        return both.Item1 > 0 && both.Item1 == alone.Rows ? (both, true) : (alone, false);
    }

    private static void DrawOthers(Canvas canvas, TwoOnOneBar b, string clock, int row)
    {
        var left = canvas.Size.Columns - 1 - BigDigits.Width(clock, 2);
        BigDigits.Draw(canvas, left, row, clock, (1, 2), Look.Plain);
        canvas.WriteRight(canvas.Size.Columns - 1, row + BigDigits.Dots, SharedWords.Other(b));
    }

    private static int DrawBar(Canvas canvas, Session s, int left, int row, string change)
    {
        var bottom = Frame.Bottom(canvas.Size);
        if (change.Length > 0 && row < bottom)
        {
            canvas.Write(left, row++, Frame.Fit(change, canvas.Size.Columns - left), Look.Bold | (s.Phase is Resting ? Look.Next : Look.Plain));
        }

        if (Stack(s) is not { } stack)
        {
            return row;
        }

        var each = stack.Side.Count == 0 ? "the empty bar" : $"each side: {string.Join(" + ", stack.Side.Select(m => m.Number))}";
        canvas.Write(left, row, each);
        canvas.WriteRight(canvas.Size.Columns - 1, row, $"bar {stack.Bar.Mass.Number}");
        if (stack.Side.Count == 0 || canvas.Size.Plain || bottom - row < SleevePicture.Rows + 5)
        {
            return row + 1;
        }

        SleevePicture.Draw(canvas, left, row + 1, stack);
        return row + SleevePicture.Rows + 2;
    }

    private static void DrawLines(Canvas canvas, TwoOnOneBar b, IReadOnlyList<string> lines, int left, int row)
    {
        var (width, bottom) = (canvas.Size.Columns - left, Frame.Bottom(canvas.Size));
        if (Urgent(b) is var (text, look))
        {
            var wrapped = Frame.Wrap(text, width);
            bottom -= wrapped.Count;
            for (var i = 0; i < wrapped.Count; i++)
            {
                canvas.Fill(left, bottom + i, width, ' ');
                canvas.Write(left, bottom + i, wrapped[i], look);
            }
        }

        foreach (var line in lines.SelectMany(l => Frame.Wrap(l, width)).TakeWhile(_ => row < bottom))
        {
            canvas.Write(left, row++, line);
        }
    }

    /// <summary>A doubt, or else a passing sentence.</summary>
    private static (string Text, Look Look)? Urgent(TwoOnOneBar b) => b.InTurn.Phase is Lifting { Doubt: { } doubt } p
        ? ($"{doubt}. ENTER again writes {Shown(b.InTurn, p)}", Look.Bold | Look.Reverse)
        : SharedWords.Told(b) is { } told ? (told, Look.Bold) : null;

    private static IReadOnlyList<string> Lines(TwoOnOneBar b, PageSize size)
    {
        var (s, item) = (b.InTurn, (SlotItem)b.InTurn.Place.Current!);
        var work = s.Place.Work(item.Slot).ToList();
        string[] lines =
        [
            s.Phase is Resting ? $"then {Asks(s)}" : "",
            size.HasDigits(14) ? "" : SharedWords.Other(b),
            Load(s) is { Amount: > 0 } load ? SharedWords.InOwnUnit(s, load) : "",
            b.Why,
            work.Count > 0 ? $"today {Words.Row(work)}" : item.Asked.Why.Line,
            $"cue: {s.Setting.Catalogue[item.Asked.Exercise].Cues.WayDown}",
        ];
        return [.. lines.Where(l => l.Length > 0)];
    }

    private static IReadOnlyList<KeyHint> Hints(TwoOnOneBar b) => b.InTurn.Phase switch
    {
        Lifting lifting => LiftPage.Hints(b.InTurn, lifting, SharedWords.Undo(b)),
        Resting resting => RestPage.Hints(b.InTurn, resting, SharedWords.Undo(b), SharedWords.GoesNow(b)),
        _ => [],
    };

    private static string State(Session s) => s.Phase switch
    {
        Resting { Clock.IsHeld: true } => " HELD ",
        Resting => " REST ",
        _ => " LIFT ",
    };

    private static Mass? Load(Session s) => s.Phase is Lifting p ? SetInHand.Load(s, p) : SetInHand.AskedLoad(s);

    private static BarStack? Stack(Session s) => BarInHand.For(s, Load(s));

    private static string Change(Session s) => BarInHand.Change(s, Load(s)) is { } change ? change.Text
        : s.Place.Current is SlotItem item && Load(s) is { Amount: > 0 } load ? LoadWords.With(s.Setting.Catalogue[item.Asked.Exercise], load, s.Setting.Kit) : "";

    private static string Which(Session s) => s.Place.Current is TotalItem total
        ? $"{s.Place.Counted(total.Slot)} of {total.Total} done"
        : Words.Which(s.Place.Current!);

    private static string Asks(Session s) => s.Place.Current is SetItem set and not HoldItem && SetInHand.AskedLoad(s) is { Amount: > 0 } load
        ? $"{load} x {set.Target}"
        : Words.Asks(s.Place.Current!);

    private static string Digits(Session s, Lifting p) => SetInHand.Load(s, p) is { Amount: > 0 } load
        ? $"{load.Number} x {SetInHand.Reps(s, p)}"
        : $"{SetInHand.Reps(s, p)}";

    private static string Unit(Session s, Lifting p) => SetInHand.Load(s, p) is { Amount: > 0 } load ? load.Symbol : "reps";

    private static string Shown(Session s, Lifting p) => SetInHand.Load(s, p) is { Amount: > 0 } load
        ? $"{load} x {SetInHand.Reps(s, p)}"
        : $"{SetInHand.Reps(s, p)} reps";
}
