namespace RackSide.Pages;

/// <summary>One line of a list.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Ticked">Whether its box is ticked; null where it has no box.</param>
public readonly record struct ListLine(string Text, bool? Ticked = null);

/// <summary>A page of numbered lines, one of which is chosen.</summary>
/// <param name="Title">Where we are; the left of the top line.</param>
/// <param name="Lines">At most nine, so that one digit reaches each.</param>
/// <param name="Chosen">The chosen line, from 0; it is marked by <c>&gt;</c> and has the cursor.</param>
public sealed record ListPage(string Title, IReadOnlyList<ListLine> Lines, int Chosen) : BodyPage(Title)
{
    /// <summary>What is asked, above the lines; may be left out on a page too small for it.</summary>
    public string Question { get; init; } = "";

    /// <summary>The page. Lines stand apart where there is room; where there is none, those about the chosen one are shown.</summary>
    public override Page Draw(PageSize size)
    {
        var question = BodyText.Lines(Question, size);
        var entries = Lines.Select((_, i) => Entry(i, BodyText.Width(size))).ToList();
        var body = Arrangements(question, entries).FirstOrDefault(a => a.Count <= BodyText.Height(size))
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

    // The roomiest first.
    private static IEnumerable<IReadOnlyList<BodyLine>> Arrangements(
        IReadOnlyList<BodyLine> question, IReadOnlyList<IReadOnlyList<BodyLine>> entries)
    {
        var together = BodyText.Stack(entries, spaced: false);
        yield return BodyText.Stack([question, .. entries], spaced: true);
        yield return BodyText.Stack([question, together], spaced: true);
        yield return BodyText.Stack([question, together], spaced: false);
        yield return together;
    }

    private List<BodyLine> Entry(int index, int width)
    {
        var box = Lines[index].Ticked switch { true => "[x] ", false => "[ ] ", null => "" };
        var head = $"{(index == Chosen ? '>' : ' ')} {index + 1}  {box}";
        var look = index == Chosen ? Look.Bold | Look.Now : Look.Plain;
        return [.. BodyText.Wrap(Lines[index].Text, Math.Max(1, width - head.Length)).Select((line, i) =>
            new BodyLine((i == 0 ? head : new string(' ', head.Length)) + line, look, index == Chosen && i == 0))];
    }
}
