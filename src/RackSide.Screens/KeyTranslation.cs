using RackSide.Pages;
using Terminal.Gui.Input;
using Code = Terminal.Gui.Drivers.KeyCode;

namespace RackSide.Screens;

/// <summary>Turns the library's keys into ours.</summary>
public static class KeyTranslation
{
    /// <summary>
    /// The press a key stands for, or null for keys that mean nothing here: chords with Ctrl or Alt, function keys, Shift
    /// with Tab, the 5 of the numeric pad with NumLock off.
    /// </summary>
    /// <remarks>
    /// Two chords count as their plain key, because nobody pressed Ctrl: Enter of the numeric pad arrives as Ctrl+Enter
    /// where the terminal sends LF, and Backspace as Ctrl+Backspace from pads that send BS instead of DEL.
    /// </remarks>
    public static KeyPress? Translate(Key key)
    {
        var code = key.KeyCode & ~(Code.CtrlMask | Code.ShiftMask | Code.AltMask);
        if (key.IsAlt || (key.IsCtrl && code is not (Code.Enter or Code.Backspace)) || (key.IsShift && code is Code.Tab))
        {
            return null;
        }

        return Named(code) is { } named ? new KeyPress(named) : Written(key);
    }

    private static Pages.KeyCode? Named(Code code) => code switch
    {
        Code.Enter => Pages.KeyCode.Enter,
        Code.Esc => Pages.KeyCode.Escape,
        Code.Tab => Pages.KeyCode.Tab,
        Code.Backspace => Pages.KeyCode.Backspace,
        Code.CursorUp => Pages.KeyCode.Up,
        Code.CursorDown => Pages.KeyCode.Down,
        Code.CursorLeft => Pages.KeyCode.Left,
        Code.CursorRight => Pages.KeyCode.Right,
        Code.Home => Pages.KeyCode.Home,
        Code.End => Pages.KeyCode.End,
        Code.PageUp => Pages.KeyCode.PageUp,
        Code.PageDown => Pages.KeyCode.PageDown,
        Code.Insert => Pages.KeyCode.Insert,
        Code.Delete => Pages.KeyCode.Delete,
        _ => null,
    };

    private static KeyPress? Written(Key key) =>
        key.TryGetPrintableRune(out var rune) && rune.IsBmp ? KeyPress.Of((char)rune.Value) : null;
}
