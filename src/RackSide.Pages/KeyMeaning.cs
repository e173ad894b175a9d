namespace RackSide.Pages;

/// <summary>
/// What a key means on a page of lines, of ticks or of typing. The numeric pad, the main block and the left hand
/// (Space, a, d, w) reach the same meanings; a page asks for the meaning and never for the key.
/// </summary>
public static class KeyMeaning
{
    /// <summary>Accept: Enter or Space.</summary>
    public static bool IsAccept(this KeyPress key) => key.Code == KeyCode.Enter || key.Is(' ');

    /// <summary>One page back, or out of what is open: <c>/</c> or Esc.</summary>
    public static bool IsBack(this KeyPress key) => key.Code == KeyCode.Escape || key.Is('/');

    /// <summary>The stop signs: <c>!</c>, on every page.</summary>
    public static bool IsStopSigns(this KeyPress key) => key.Is('!');

    /// <summary>The keys: <c>?</c>, and h where no letters are typed.</summary>
    public static bool IsHelp(this KeyPress key) => key.Is('?') || key.Is('h');

    /// <summary>Whether the key writes a letter.</summary>
    public static bool IsLetter(this KeyPress key) => key.Code == KeyCode.Character && char.IsLetter(key.Character);

    /// <summary>One more.</summary>
    public static bool IsMore(this KeyPress key) => key.Is('+') || key.Is('=') || key.Is('d');

    /// <summary>One fewer.</summary>
    public static bool IsFewer(this KeyPress key) => key.Is('-') || key.Is('a');

    /// <summary>A line down, where <c>+</c> and <c>-</c> change the line: <c>*</c>, w or Down.</summary>
    public static bool IsNextLine(this KeyPress key) => key.Code == KeyCode.Down || key.Is('*') || key.Is('w');

    /// <summary>A line up.</summary>
    public static bool IsLineUp(this KeyPress key) => key.Code == KeyCode.Up;

    /// <summary>The digit pressed, or null.</summary>
    public static int? Digit(this KeyPress key) =>
        key.Code == KeyCode.Character && char.IsAsciiDigit(key.Character) ? key.Character - '0' : null;

    private static bool Is(this KeyPress key, char character) => key.Code == KeyCode.Character && key.Character == character;
}
