using System.Text.RegularExpressions;

namespace RackSide.Pages.Plain;

/// <summary>A page as lines of text: what it says, then what the keys do. No rule, no bar, nothing that only looks good.</summary>
/// <param name="Lines">What it says, in reading order.</param>
/// <param name="Keys">What the keys do now, in one line.</param>
/// <param name="Tells">What the page says of itself.</param>
public sealed partial record PlainPage(IReadOnlyList<string> Lines, string Keys, Telling Tells)
{
    private const int KeyRows = 2;

    /// <summary>The lines of a page that was drawn for <see cref="PageSize.ToRead"/>.</summary>
    public static PlainPage Of(Page page)
    {
        var rows = page.Text.TrimEnd('\n').Split('\n');
        return new PlainPage(
            [.. rows.SkipLast(KeyRows).Where(Says).Select(Close)],
            "keys: " + string.Join(", ", rows.TakeLast(KeyRows).Where(Says).Select(row => Gap().Replace(row.Trim(), ", "))),
            page.Tells);
    }

    private static bool Says(string row) => row.Any(char.IsAsciiLetterOrDigit);

    /// <summary>What stands at both ends of a row is read one after the other.</summary>
    private static string Close(string row) => Gap().Replace(row.Trim(), "   ");

    [GeneratedRegex(" {3,}")]
    private static partial Regex Gap();
}
