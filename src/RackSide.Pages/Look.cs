namespace RackSide.Pages;

/// <summary>
/// How a cell stands out. Bold and reverse carry weight; the hues only repeat what a word or a number says, because they are lost
/// on some palettes and to some eyes.
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

    /// <summary>What is in hand (bright yellow where there is colour).</summary>
    Now = 4,

    /// <summary>What comes next (bright cyan where there is colour).</summary>
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
