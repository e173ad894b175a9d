namespace RackSide.Pages;

/// <summary>A page in the 95 printable characters of ASCII, for a terminal or a font that has no others.</summary>
public static class SevenBit
{
    /// <summary>The glyph that stands for another: a block is <c>#</c>, a shade <c>:</c> or <c>.</c>, a letter without its accent, else <c>?</c>.</summary>
    public static char Of(char glyph) => glyph switch
    {
        >= ' ' and <= '~' => glyph,
        '█' or '■' => '#',
        '▒' => ':',
        '░' or '·' => '.',
        '─' => '-',
        '│' => '|',
        '┌' or '┐' or '└' or '┘' or '├' or '┤' or '┬' or '┴' or '┼' => '+',
        '×' => 'x',
        >= '\u00c0' and <= '\u017f' => Plain[glyph - '\u00c0'],
        _ => '?',
    };

    // The letters of Latin-1 and Latin Extended-A in their order (Unicode, U+00C0 to U+017F), each without its accent.
    private const string Plain =
        "AAAAAAACEEEEIIIIDNOOOOOxOUUUUYTsaaaaaaaceeeeiiiidnooooo/ouuuuyty"
        + "AaAaAaCcCcCcCcDdDdEeEeEeEeEeGgGgGgGgHhHhIiIiIiIiIiIiJjKkkLlLlLlLlLlNnNnNnnNnOoOoOoOoRrRrRrSsSsSsSsTtTtTtUuUuUuUuUuUuWwYyYZzZzZzs";
}
