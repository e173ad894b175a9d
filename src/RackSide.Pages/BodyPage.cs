namespace RackSide.Pages;

/// <summary>
/// What pages of lines have in common: the frame, the window on the lines, and the passing sentence. Its three kinds are
/// the page that is read, the page of lines to choose from, and the page with one thing to type.
/// </summary>
/// <param name="Title">Where we are; the left of the top line.</param>
public abstract record BodyPage(string Title)
{
    private const string More = "...";

    // Six hints in 30 columns would be six stumps; four can be read.
    private const int NarrowColumns = 45;

    /// <summary>The right of the top line.</summary>
    public string Place { get; init; } = "";

    /// <summary>What the keys do now, most important first; at most six are shown.</summary>
    public IReadOnlyList<KeyHint> Hints { get; init; } = [];

    /// <summary>A passing sentence, or null.</summary>
    public string? Said { get; init; }

    /// <summary>What the page says of itself to whoever reads it line by line.</summary>
    private protected virtual Telling Tells => new();

    /// <summary>The page.</summary>
    public abstract Page Draw(PageSize size);

    /// <summary>The page with these lines; where they are too many, those about the active one are shown.</summary>
    /// <param name="size">Its size.</param>
    /// <param name="lines">The lines of the body.</param>
    /// <param name="column">Where in the active line the cursor stands.</param>
    private protected Page Draw(PageSize size, IReadOnlyList<BodyLine> lines, int column = 0)
    {
        var active = Math.Max(0, lines.ToList().FindIndex(line => line.Active));
        var canvas = new Canvas(size) { Tells = Tells };
        Frame.Header(canvas, Title, Place);
        var first = FirstShown(lines.Count, BodyText.Height(size), active);
        DrawLines(canvas, lines, first);
        Frame.Keys(canvas, [.. Hints.Take(size.Columns < NarrowColumns ? 4 : 6)]);
        DrawSaid(canvas);
        canvas.Cursor(BodyText.Left(size) + column, Frame.Top(size) + active - first);
        return canvas.Done();
    }

    // Near the top, because the rest of a broken line and what comes next stand below it.
    private static int FirstShown(int count, int height, int active) =>
        Math.Clamp(active - ((height - 1) / 4), 0, Math.Max(0, count - height));

    private static void DrawLines(Canvas canvas, IReadOnlyList<BodyLine> lines, int first)
    {
        var (left, top, height) = (BodyText.Left(canvas.Size), Frame.Top(canvas.Size), BodyText.Height(canvas.Size));
        for (var i = 0; i < height && first + i < lines.Count; i++)
        {
            var line = lines[first + i];
            canvas.Write(left, top + i, Frame.Fit(line.Text, BodyText.Width(canvas.Size)), line.Look);
        }

        if (first + height < lines.Count)
        {
            canvas.WriteRight(canvas.Size.Columns, top + height - 1, More);
        }
    }

    // The sentence lies on the rule above the keys, so that nothing moves when it comes and goes; a second line of it, on
    // a narrow page, lies on the row above.
    private void DrawSaid(Canvas canvas)
    {
        var lines = Said is null ? [] : BodyText.Wrap(Said, Math.Max(1, canvas.Size.Columns - 4));
        for (var i = 0; i < lines.Count; i++)
        {
            var row = canvas.Size.Rows - 2 - lines.Count + i;
            canvas.Fill(0, row, canvas.Size.Columns, '─');
            canvas.Write(1, row, $" {lines[i]} ", Look.Bold);
        }
    }
}
