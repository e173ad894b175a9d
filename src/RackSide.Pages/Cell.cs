namespace RackSide.Pages;

/// <summary>One cell of a page.</summary>
/// <param name="Glyph">One character of width 1 from the safe set: ASCII, light box lines, full block, shades, middle dot, times.</param>
/// <param name="Look">How it stands out.</param>
public readonly record struct Cell(char Glyph, Look Look)
{
    /// <summary>An empty cell.</summary>
    public static Cell Blank { get; } = new(' ', Look.Plain);
}
