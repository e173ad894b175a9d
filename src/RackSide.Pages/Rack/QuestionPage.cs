using System.Globalization;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Progression;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>The question after a search set: one number, what it would lead to, and what to keep clear of.</summary>
internal static class QuestionPage
{
    private const string State = " HOW MANY LEFT? ";

    public static void Draw(Canvas canvas, Session s, Asking p)
    {
        var item = (AskItem)s.Place.Current!;
        var (size, margin, top) = (canvas.Size, canvas.Size.Compact ? 0 : 1, Frame.Top(canvas.Size));
        canvas.Tells = canvas.Tells with { Typing = p.Typed.Length > 0 };
        SessionPages.Header(canvas, s, Words.Name(s, item).ToUpperInvariant());
        canvas.Write(margin, top, State, Look.Bold | Look.Reverse);
        var written = RestPage.Written(s);
        if (margin + State.Length + 1 + written.Length <= size.Columns - margin)
        {
            canvas.WriteRight(size.Columns - margin, top, written);
        }

        var row = DrawNumber(canvas, p, margin, top + (size.Rows < 18 ? 1 : 2));
        DrawLines(canvas, s, p, margin, row);
        Frame.Keys(canvas, Hints(s, p));
    }

    private static int DrawNumber(Canvas canvas, Asking p, int left, int row)
    {
        const string Unit = " more good reps";
        var (size, text) = (canvas.Size, AnswerInHand.Left(p).ToString(CultureInfo.InvariantCulture));
        var scale = BigDigits.Scale(text, size.Columns - left - Unit.Length, Math.Max(BigDigits.Dots, size.Rows * 30 / 100));
        if (scale.Rows == 0 || !size.HasDigits(12))
        {
            canvas.Write(left, row, text + Unit, Look.Bold);
            canvas.Cursor(left, row);
            return row + 1;
        }

        var last = row + (BigDigits.Dots * scale.Rows) - 1;
        var end = BigDigits.Draw(canvas, left, row, text, scale, Look.Bold);
        canvas.Write(end, last, Unit.TrimStart(), Look.Bold);
        canvas.Cursor(left, last);
        return last + (size.Rows < 18 ? 1 : 2);
    }

    private static void DrawLines(Canvas canvas, Session s, Asking p, int left, int row)
    {
        var width = canvas.Size.Columns - left;
        (string Text, Look Look)[] lines =
        [
            (SessionPages.Told(s) ?? "", Look.Bold),
            ("How many more good reps were left in you?", Look.Plain),
            ($"{AnswerInHand.Left(p)} left: {Then(s, p)}", Look.Bold | Look.Next),
            ($"0-{LoadSearch.Enough - 1} too heavy, {LoadSearch.Enough}-{LoadSearch.Easy - 1} today's load, {LoadSearch.Easy}+ a heavier try", Look.Plain),
            ("In doubt fewer; 0 if the form slipped. Never lift to the limit to find out.", Look.Plain),
        ];
        foreach (var (line, look) in lines.Where(l => l.Text.Length > 0).SelectMany(l => Frame.Wrap(l.Text, width).Select(t => (t, l.Look))).TakeWhile(_ => row < Frame.Bottom(canvas.Size)))
        {
            canvas.Write(left, row++, line, look);
        }
    }

    private static IReadOnlyList<KeyHint> Hints(Session s, Asking p) =>
    [
        new(KeyTable.Pad(Verb.Accept), $"{AnswerInHand.Left(p)} left"),
        new(KeyTable.Pad(Verb.Digit), "type how many", "type it"),
        new(KeyTable.Pad(Verb.Other), "cue card"),
        p.Typed.Length > 0 ? new(KeyTable.Pad(Verb.Menu), "clear") : Hint.Menu,
        Hint.Undo(s),
    ];

    private static string Then(Session s, Asking p) => AnswerInHand.Next(s, AnswerInHand.Left(p)) switch
    {
        SearchStep.Try { Load: var load } => $"{load} is tried next",
        SearchStep.Found { Load: var load } when load == AnswerInHand.Set(s).Load => $"stay at {load} today",
        SearchStep.Found { Load: var load } => $"back to {load} today",
        _ => "",
    };
}
