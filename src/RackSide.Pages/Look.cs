namespace RackSide.Pages;

/// <summary>
/// How a cell stands out. Bold and reverse carry weight; the hues only repeat what a word or a number says, because they are
/// lost on some palettes and to some eyes. For the same reason no letter and no digit is ever drawn in a hue: bright yellow as
/// text stands at 3.4 to 1 on one of five usual palettes, which is enough for a bar and not for a word (WCAG 2.2, 1.4.3
/// and 1.4.11).
/// </summary>
[Flags]
public enum Look
{
    /// <summary>The terminal's own foreground on its own background.</summary>
    Plain = 0,

    /// <summary>Bold.</summary>
    Bold = 1,

    /// <summary>Foreground and background exchanged.</summary>
    Reverse = 2,

    /// <summary>What is in hand; its hue, bright yellow, shows on blocks alone.</summary>
    Now = 4,

    /// <summary>What comes next; its hue, bright cyan, shows on blocks alone.</summary>
    Next = 8,

    /// <summary>A red disc.</summary>
    DiscRed = 16,

    /// <summary>A blue disc.</summary>
    DiscBlue = 32,

    /// <summary>A yellow disc.</summary>
    DiscYellow = 64,

    /// <summary>A green disc.</summary>
    DiscGreen = 128,
}

/// <summary>Where the hues show.</summary>
public static class Hues
{
    private const string Blocks = "█▒░■";

    /// <summary>The look a cell is drawn with: letters, digits and lines go without a hue.</summary>
    public static Look Shown(this Cell cell) =>
        Blocks.Contains(cell.Glyph, StringComparison.Ordinal) ? cell.Look : cell.Look & ~(Look.Now | Look.Next);
}
