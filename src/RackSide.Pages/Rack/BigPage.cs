namespace RackSide.Pages.Rack;

/// <summary>
/// The large page: the state word, one thing in digits as large as the window can hold, one line that must not be missed,
/// and the keys. A load and its reps stand one over the other where they get larger that way.
/// </summary>
internal static class BigPage
{
    /// <summary>Draws it below a top line that is drawn already.</summary>
    /// <param name="canvas">The page.</param>
    /// <param name="state">The row of the state: its word, what it is about, and whether it goes over the whole width.</param>
    /// <param name="digits">What is drawn in digits: a clock, or load and reps apart.</param>
    /// <param name="unit">The unit after them, in words.</param>
    /// <param name="line">The one line.</param>
    public static void Draw(Canvas canvas, (string Word, string About, bool Whole) state, IReadOnlyList<string> digits, string unit, string line)
    {
        var top = Frame.Top(canvas.Size);
        var look = Alarms.Bar(canvas, top, state.Whole, Look.Bold);
        canvas.Write(0, top, state.Word, Look.Bold | Look.Reverse);
        canvas.Write(state.Word.Length + 1, top, Frame.Fit($"{state.About}{(unit.Length > 0 ? $"   {unit}" : "")}", canvas.Size.Columns - state.Word.Length - 1), look);
        var bottom = Frame.Bottom(canvas.Size) - 1;
        var lines = Frame.Wrap(line, canvas.Size.Columns);
        for (var i = 0; i < lines.Count; i++)
        {
            canvas.Write(0, bottom - lines.Count + 1 + i, lines[i], Look.Bold);
        }

        DrawDigits(canvas, digits, top + 2, bottom - lines.Count);
    }

    private static void DrawDigits(Canvas canvas, IReadOnlyList<string> digits, int top, int bottom)
    {
        var (columns, rows) = (canvas.Size.Columns, Math.Max(1, bottom - top));
        IReadOnlyList<string>[] ways = digits.Count > 1 ? [[string.Join(' ', digits)], digits] : [digits];
        var (way, tall) = ways.Select(w => (w, Tall: Tallest(w, columns, rows))).MaxBy(w => (w.Tall.Rows, w.Tall.Columns));
        var row = top;
        canvas.Cursor(0, row);
        foreach (var text in way)
        {
            if (tall.Rows == 0)
            {
                canvas.Write(0, row++, text, Look.Bold);
                continue;
            }

            BigDigits.DrawTall(canvas, (columns - BigDigits.Width(text, tall.Columns)) / 2, row, text, tall, Look.Bold);
            row += tall.Rows + 1;
            canvas.Cursor(0, row - 2);
        }
    }

    private static (int Rows, int Columns) Tallest(IReadOnlyList<string> lines, int columns, int rows) =>
        lines.Select(l => BigDigits.Tallest(l, columns, (rows - (lines.Count - 1)) / lines.Count)).MinBy(s => (s.Rows, s.Columns));
}
