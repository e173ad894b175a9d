namespace RackSide.Pages;

/// <summary>A page that is read and left: cautions, stop signs, help.</summary>
/// <param name="Title">Where we are; the left of the top line.</param>
/// <param name="Paragraphs">What is to be read; those that begin with "- " stand together as a list.</param>
public sealed record TextPage(string Title, IReadOnlyList<string> Paragraphs) : BodyPage(Title)
{
    // On the smallest page no text of ours is longer than this.
    private const int MostLines = 90;

    /// <summary>Lines that stand above the paragraphs as they are; empty for none.</summary>
    internal IReadOnlyList<BodyLine> Picture { get; init; } = [];

    /// <summary>How many lines were moved on, on a page too small for the text; whatever is more than can be is as much as can be.</summary>
    public int MovedOn { get; init; }

    /// <summary>The page. Paragraphs stand apart where there is room; where there is none, a hint says how to read on.</summary>
    public override Page Draw(PageSize size)
    {
        var parts = Parts(size);
        var spaced = BodyText.Stack(parts, spaced: true);
        var lines = spaced.Count <= BodyText.Height(size) ? spaced : BodyText.Stack(parts, spaced: false);
        var unseen = Math.Max(0, lines.Count - BodyText.Height(size));
        var page = unseen == 0 ? this : this with { Hints = [.. Hints.Take(1), new("+ -", "read on"), .. Hints.Skip(1)] };
        return page.Draw(size, [.. lines.Skip(Math.Min(MovedOn, unseen))]);
    }

    /// <summary>How many lines are moved on after a key: plus and up go back, minus and down go on; null for other keys.</summary>
    public static int? Move(KeyPress key, int movedOn) =>
        key.IsMore() || key.IsLineUp() ? Math.Max(0, movedOn - 1)
        : key.IsFewer() || key.Code == KeyCode.Down ? Math.Min(MostLines, movedOn + 1)
        : null;

    private List<IReadOnlyList<BodyLine>> Parts(PageSize size)
    {
        List<IReadOnlyList<BodyLine>> parts = Picture.Count > 0 ? [Picture] : [];
        for (var i = 0; i < Paragraphs.Count; i++)
        {
            var lines = BodyText.Lines(Paragraphs[i], size);
            if (i > 0 && BodyText.IsListed(Paragraphs[i]) && BodyText.IsListed(Paragraphs[i - 1]))
            {
                parts[^1] = [.. parts[^1], .. lines];
            }
            else
            {
                parts.Add(lines);
            }
        }

        return parts;
    }
}
