namespace RackSide.Pages;

/// <summary>One line of a list.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Ticked">Whether its box is ticked; null where it has no box.</param>
/// <param name="Value">What stands in a column of its own after the texts; such a line is not broken.</param>
public sealed record ListLine(string Text, bool? Ticked = null, string Value = "");

/// <summary>A page of numbered lines, one of which is chosen.</summary>
/// <param name="Title">Where we are; the left of the top line.</param>
/// <param name="Lines">At most nine, so that one digit reaches each.</param>
/// <param name="Chosen">The chosen line, from 0; it is marked by <c>&gt;</c> and has the cursor.</param>
public sealed record ListPage(string Title, IReadOnlyList<ListLine> Lines, int Chosen) : BodyPage(Title)
{
    /// <summary>What is asked, in paragraphs above the lines; may be left out on a page too small for it.</summary>
    public IReadOnlyList<string> Above { get; init; } = [];

    /// <summary>Whether lines show their digit; false where digits mean something else.</summary>
    public bool Numbered { get; init; } = true;

    /// <summary>The page. Lines stand apart where there is room; where there is none, those about the chosen one are shown.</summary>
    public override Page Draw(PageSize size)
    {
        var above = Above.Select(p => BodyText.Lines(p, size)).ToList();
        var entries = Lines.Select((_, i) => Entry(i, BodyText.Width(size))).ToList();
        var body = Arrangements(above, entries).FirstOrDefault(a => a.Count <= BodyText.Height(size))
            ?? BodyText.Stack(entries, spaced: false);
        return Draw(size, body);
    }

    /// <summary>The line a key leads to from the chosen one: a digit, or up and down; null where the key is none of these.</summary>
    /// <param name="key">The key.</param>
    /// <param name="chosen">The line chosen now, from 0.</param>
    /// <param name="count">How many lines there are.</param>
    public static int? Move(KeyPress key, int chosen, int count) => key switch
    {
        _ when key.Digit() is { } digit => digit >= 1 && digit <= count ? digit - 1 : null,
        _ when key.IsMore() || key.IsLineUp() => Math.Max(0, chosen - 1),
        _ when key.IsFewer() || key.IsNextLine() => Math.Min(count - 1, chosen + 1),
        _ => null,
    };

    /// <summary>The line a key ticks or unticks, on a page of boxes: a digit its own, the star the marked one; null for other keys.</summary>
    /// <inheritdoc cref="Move"/>
    public static int? Tick(KeyPress key, int chosen, int count) => key switch
    {
        { Code: KeyCode.Character, Character: '*' or 'w' } => chosen,
        _ when key.Digit() is not null => Move(key, chosen, count),
        _ => null,
    };

    // The roomiest first.
    private static IEnumerable<IReadOnlyList<BodyLine>> Arrangements(
        IReadOnlyList<IReadOnlyList<BodyLine>> above, IReadOnlyList<IReadOnlyList<BodyLine>> entries)
    {
        var together = BodyText.Stack(entries, spaced: false);
        yield return BodyText.Stack([.. above, .. entries], spaced: true);
        yield return BodyText.Stack([.. above, together], spaced: true);
        yield return BodyText.Stack([.. above, together], spaced: false);
        yield return together;
    }

    private List<BodyLine> Entry(int index, int width)
    {
        var head = Head(index);
        var look = index == Chosen ? Look.Bold | Look.Now : Look.Plain;
        return [.. Broken(Lines[index], Math.Max(1, width - head.Length)).Select((line, i) =>
            new BodyLine((i == 0 ? head : new string(' ', head.Length)) + line, look, index == Chosen && i == 0))];
    }

    private string Head(int index)
    {
        var box = Lines[index].Ticked switch { true => "[x] ", false => "[ ] ", null => "" };
        var digit = !Numbered ? "" : index < 9 ? $"{index + 1}  " : "   ";
        return $"{(index == Chosen ? '>' : ' ')} {digit}{box}";
    }

    private IReadOnlyList<string> Broken(ListLine line, int width) => line.Value.Length > 0
        ? [$"{line.Text.PadRight(Lines.Max(other => other.Text.Length))}   {line.Value}"]
        : BodyText.Wrap(line.Text, width);
}
