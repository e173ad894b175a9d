namespace RackSide.Pages.Tests;

/// <summary>
/// The glyphs that every console font here draws alike: of 456 fonts of a usual console-setup package, nearly all have
/// these and few have half blocks, eighths or braille (counted for this project's screen standards).
/// </summary>
public static class SafeGlyphs
{
    private const string Beyond = "█░▒■─│┌┐└┘├┤┬┴┼·×";

    /// <summary>The glyphs of a page that are not safe.</summary>
    public static IEnumerable<char> Unsafe(Page page) =>
        page.Text.Where(glyph => glyph != '\n' && !(glyph is >= ' ' and <= '~') && !Beyond.Contains(glyph, StringComparison.Ordinal)).Distinct();
}
