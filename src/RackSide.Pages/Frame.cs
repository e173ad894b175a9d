namespace RackSide.Pages;

/// <summary>One entry of the key bar.</summary>
/// <param name="Key">As printed on the key: <c>ENTER</c>, <c>+</c>, <c>0-9</c>.</param>
/// <param name="Does">What it does now, in a few words.</param>
/// <param name="Short">The same in fewer, for a compact page; null where it is short already.</param>
public sealed record KeyHint(string Key, string Does, string? Short = null);

/// <summary>
/// What every page has in the same place: one line at the top that says where we are, two at the bottom that say what
/// the keys do now, each with a rule between.
/// </summary>
public static class Frame
{
    /// <summary>The first row a page may draw in.</summary>
    public static int Top(PageSize size) => size.Compact ? 1 : 2;

    /// <summary>The row after the last one a page may draw in.</summary>
    public static int Bottom(PageSize size) => Math.Max(Top(size), size.Rows - 3);

    /// <summary>Draws the top line and, where there is room, its rule.</summary>
    public static void Header(Canvas canvas, string left, string right)
    {
        var margin = Margin(canvas.Size);
        canvas.Write(margin, 0, left, Look.Bold);
        if (left.Length + right.Length + (2 * margin) + 2 <= canvas.Size.Columns)
        {
            canvas.WriteRight(canvas.Size.Columns - margin, 0, right);
        }

        if (!canvas.Size.Compact)
        {
            canvas.Fill(0, 1, canvas.Size.Columns, '─');
        }
    }

    /// <summary>
    /// Draws the key bar: up to six hints in two rows, most important first; in equal columns, or on a compact page one
    /// behind the other in their short words.
    /// </summary>
    public static void Keys(Canvas canvas, params IReadOnlyList<KeyHint> hints)
    {
        var (size, margin) = (canvas.Size, Margin(canvas.Size));
        canvas.Fill(0, size.Rows - 3, size.Columns, '─');
        var perRow = Math.Max(1, (Math.Min(6, hints.Count) + 1) / 2);
        var columns = (size.Columns - margin) / perRow;
        for (var first = 0; first < Math.Min(6, hints.Count); first += perRow)
        {
            var shown = hints.Skip(first).Take(perRow).Select(h => (h.Key, Does: size.Compact ? h.Short ?? h.Does : h.Does)).ToList();
            var fits = shown.All(h => h.Key.Length + h.Does.Length + 2 < columns);
            var column = margin;
            foreach (var (key, does) in shown)
            {
                var row = size.Rows - 2 + (first / perRow);
                canvas.Write(column, row, key, Look.Bold);
                canvas.Write(column + key.Length + 1, row, fits || size.Compact ? does : Fit(does, columns - key.Length - 2));
                column += fits || !size.Compact ? columns : key.Length + does.Length + 3;
            }
        }
    }

    /// <summary>Text cut to a width.</summary>
    public static string Fit(string text, int width) => text.Length <= width ? text : text[..Math.Max(0, width)];

    /// <summary>Text broken between words into lines of at most a width.</summary>
    public static IReadOnlyList<string> Wrap(string text, int width)
    {
        List<string> lines = [""];
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines[^1].Length > 0 && lines[^1].Length + 1 + word.Length > width)
            {
                lines.Add("");
            }

            lines[^1] += lines[^1].Length == 0 ? word : " " + word;
        }

        return lines;
    }

    /// <summary>Lines in so much room; where there are more the last one shown says so, because what is cut off must not look whole.</summary>
    public static IEnumerable<string> Within(IReadOnlyList<string> lines, int room, int width) =>
        lines.Count <= room ? lines
        : room < 1 ? []
        : [.. lines.Take(room - 1), $"{Wrap(lines[room - 1], width - 4)[0].TrimEnd(',')} ..."];

    private static int Margin(PageSize size) => size.Compact ? 0 : 1;
}
