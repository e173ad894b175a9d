namespace RackSide.Pages;

/// <summary>One line between the top line and the key bar.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Look">How it stands out.</param>
/// <param name="Active">Whether the active place is in it.</param>
internal sealed record BodyLine(string Text, Look Look = Look.Plain, bool Active = false)
{
    /// <summary>A line with nothing in it.</summary>
    public static BodyLine Blank { get; } = new("");
}

/// <summary>Paragraphs broken into the lines of a page.</summary>
internal static class BodyText
{
    private const string Bullet = "- ";

    private const int LongestWord = 12;

    // A longer line than this is hard to follow back to the next one.
    private const int Widest = 76;

    /// <summary>How many characters a line holds.</summary>
    public static int Width(PageSize size) => Math.Max(1, Math.Min(Widest, size.Columns - (2 * Left(size))));

    /// <summary>The column where lines begin.</summary>
    public static int Left(PageSize size) => size.Compact ? 0 : 2;

    /// <summary>How many lines a page holds.</summary>
    public static int Height(PageSize size) => Math.Max(1, Frame.Bottom(size) - Frame.Top(size));

    /// <summary>Whether a paragraph is an entry of a list.</summary>
    public static bool IsListed(string paragraph) => paragraph.StartsWith(Bullet, StringComparison.Ordinal);

    /// <summary>
    /// A paragraph in lines. One that begins with "- ", or with a word and two blanks, hangs under what follows; a word too
    /// long for a line is cut up; and one that fits stays as it is.
    /// </summary>
    public static IReadOnlyList<string> Wrap(string paragraph, int width)
    {
        if (paragraph.Length <= width)
        {
            return [paragraph];
        }

        var word = IsListed(paragraph) ? Bullet.Length : WordBefore(paragraph);
        var inner = Math.Max(1, width - word);
        return [.. Frame.Wrap(CutLongWords(paragraph[word..], inner), inner).Select((line, i) => (i == 0 ? paragraph[..word] : new string(' ', word)) + line)];
    }

    /// <summary>Columns of the word a paragraph is headed by, with the blanks after it; 0 where there is none.</summary>
    private static int WordBefore(string paragraph)
    {
        var at = paragraph.IndexOf("  ", StringComparison.Ordinal);
        var text = at < 0 ? 0 : at + paragraph[at..].TakeWhile(c => c == ' ').Count();
        return text <= LongestWord ? text : 0;
    }

    /// <summary>A paragraph as plain lines of a page; an empty one is no line at all.</summary>
    public static IReadOnlyList<BodyLine> Lines(string paragraph, PageSize size) =>
        paragraph.Length == 0 ? [] : [.. Wrap(paragraph, Width(size)).Select(line => new BodyLine(line))];

    /// <summary>Parts one under the other, with a blank line between them where asked for.</summary>
    public static IReadOnlyList<BodyLine> Stack(IEnumerable<IReadOnlyList<BodyLine>> parts, bool spaced)
    {
        List<BodyLine> lines = [];
        foreach (var part in parts.Where(p => p.Count > 0))
        {
            if (spaced && lines.Count > 0)
            {
                lines.Add(BodyLine.Blank);
            }

            lines.AddRange(part);
        }

        return lines;
    }

    private static string CutLongWords(string text, int width) => string.Join(
        ' ',
        text.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => word.Chunk(width)).Select(piece => new string(piece)));
}
