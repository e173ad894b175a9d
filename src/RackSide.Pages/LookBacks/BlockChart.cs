using RackSide.Training.Summary;

namespace RackSide.Pages.LookBacks;

/// <summary>
/// Numbers as bars that stand on zero: full blocks, and where a number is a span a shade from its lower to its upper end.
/// The highest fills the height. Fine bars end in an eighth of a block; the others use glyphs that console fonts have.
/// </summary>
public static class BlockChart
{
    /// <summary>More than this a bar is a wall.</summary>
    private const int Widest = 3;

    private const int Eighths = 8;

    private const string Fine = " ▁▂▃▄▅▆▇";

    /// <summary>The rows, top first, each of so many columns at most and without blanks at its end.</summary>
    /// <param name="points">One a bar, oldest first and not more than there are columns; null leaves its place empty.</param>
    /// <param name="rows">How high it is; 1 or more.</param>
    /// <param name="columns">How wide it may be; 1 or more.</param>
    /// <param name="fine">Whether the terminal has eighths of a block.</param>
    public static IReadOnlyList<string> Of(IReadOnlyList<CoursePoint?> points, int rows, int columns, bool fine)
    {
        var highest = points.Max(p => p?.Upper) ?? 0;
        if (highest <= 0)
        {
            return [];
        }

        // An eighth under a shade would leave a gap, so a span has whole blocks.
        var width = Math.Clamp(columns / points.Count, 1, Widest);
        var bars = points.Select(p => (Solid: Height(p?.Value ?? 0, highest, rows, fine && p?.Upper == p?.Value), Shade: Height(p?.Upper ?? 0, highest, rows, fine: false))).ToList();
        return [.. Enumerable.Range(1, rows).Select(row => Row(bars, rows - row, width))];
    }

    /// <summary>How many eighths of a row a number is high; what is more than nothing is seen.</summary>
    private static int Height(decimal value, decimal highest, int rows, bool fine)
    {
        var step = fine ? 1 : Eighths;
        return value <= 0 ? 0 : Math.Max(step, (int)Math.Round(value / highest * rows * Eighths / step) * step);
    }

    /// <summary>A bar of two columns or more leaves its last one empty, so that bars can be counted.</summary>
    private static string Row(List<(int Solid, int Shade)> bars, int level, int width) => string.Concat(bars.Select(bar =>
        new string(Glyph(bar.Solid, bar.Shade, level), Math.Max(1, width - 1)).PadRight(width))).TrimEnd();

    private static char Glyph(int solid, int shade, int level) => (solid - (level * Eighths)) switch
    {
        >= Eighths => '█',
        > 0 and var part => Fine[part],
        _ => shade > level * Eighths ? '▒' : ' ',
    };
}
