namespace RackSide.Pages;

/// <summary>A key without a character, or the one that has one.</summary>
public enum KeyCode
{
    /// <summary>A character; see <see cref="KeyPress.Character"/>.</summary>
    Character,

    /// <summary>Enter, of the main block or of the numeric pad.</summary>
    Enter,

    /// <summary>Esc.</summary>
    Escape,

    /// <summary>Tab.</summary>
    Tab,

    /// <summary>Backspace.</summary>
    Backspace,

    /// <summary>Up arrow; 8 on the pad with NumLock off.</summary>
    Up,

    /// <summary>Down arrow; 2 on the pad with NumLock off.</summary>
    Down,

    /// <summary>Left arrow.</summary>
    Left,

    /// <summary>Right arrow.</summary>
    Right,

    /// <summary>Home; 7 on the pad with NumLock off.</summary>
    Home,

    /// <summary>End; 1 on the pad with NumLock off.</summary>
    End,

    /// <summary>Page up; 9 on the pad with NumLock off.</summary>
    PageUp,

    /// <summary>Page down; 3 on the pad with NumLock off.</summary>
    PageDown,

    /// <summary>Insert; 0 on the pad with NumLock off.</summary>
    Insert,

    /// <summary>Delete; the decimal mark on the pad with NumLock off.</summary>
    Delete,
}

/// <summary>One press of a key, as any terminal tells it.</summary>
/// <param name="Code">Which key.</param>
/// <param name="Character">Its character where it has one, else NUL.</param>
public sealed record KeyPress(KeyCode Code, char Character = '\0')
{
    /// <summary>A press of a key that writes a character.</summary>
    public static KeyPress Of(char character) => new(KeyCode.Character, character);

    /// <summary>A press of Enter.</summary>
    public static KeyPress Enter { get; } = new(KeyCode.Enter);

    /// <summary>A press of Esc.</summary>
    public static KeyPress Escape { get; } = new(KeyCode.Escape);
}
