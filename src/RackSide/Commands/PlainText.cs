using RackSide.Pages;

namespace RackSide.Commands;

/// <summary>Text for a terminal, a pipe or a screen reader: lines of at most 80 columns, and no control character in any.</summary>
internal static class PlainText
{
    /// <summary>The widest line of the program's own text.</summary>
    public const int Width = 80;

    /// <summary>Prints lines. What came from a file or the logbook may hold control characters, and none may reach a terminal.</summary>
    public static void Print(this TextWriter to, IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            to.WriteLine(string.Concat(line.Select(c => char.IsControl(c) ? '?' : c)));
        }
    }

    /// <summary>A text broken between words, each line after that many columns of margin.</summary>
    public static IEnumerable<string> Wrap(string text, int margin = 0) =>
        Frame.Wrap(text, Width - margin).Select(line => new string(' ', margin) + line);

    /// <summary>A text by its own lines.</summary>
    public static IEnumerable<string> LinesOf(string text) => text.ReplaceLineEndings("\n").Split('\n');

    /// <summary>Things in a row as a choice: <c>a, b or c</c>.</summary>
    public static string Or(IReadOnlyList<string> things) => things.Count < 2
        ? string.Concat(things)
        : $"{string.Join(", ", things.SkipLast(1))} or {things[^1]}";
}
