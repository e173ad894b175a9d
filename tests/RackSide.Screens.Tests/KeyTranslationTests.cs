using RackSide.Pages;
using Terminal.Gui.Input;
using Code = Terminal.Gui.Drivers.KeyCode;

namespace RackSide.Screens.Tests;

public sealed class KeyTranslationTests
{
    [Theory]
    [InlineData("0123456789+-*/.,=?! ")]
    [InlineData("abcdefghijklmnopqrstuvwxyz")]
    [InlineData("ABCDEFGHIJKLMNOPQRSTUVWXYZ")]
    [InlineData("éß")]
    public void A_key_that_writes_is_the_character_it_writes(string characters)
    {
        foreach (var character in characters)
        {
            KeyTranslation.Translate(new Key(character)).Should().Be(KeyPress.Of(character));
        }
    }

    [Theory]
    [InlineData(Code.Enter, KeyCode.Enter)]
    [InlineData(Code.Enter | Code.CtrlMask, KeyCode.Enter)]
    [InlineData(Code.Backspace, KeyCode.Backspace)]
    [InlineData(Code.Backspace | Code.CtrlMask, KeyCode.Backspace)]
    [InlineData(Code.Esc, KeyCode.Escape)]
    [InlineData(Code.Tab, KeyCode.Tab)]
    [InlineData(Code.CursorUp, KeyCode.Up)]
    [InlineData(Code.CursorDown, KeyCode.Down)]
    [InlineData(Code.CursorLeft, KeyCode.Left)]
    [InlineData(Code.CursorRight, KeyCode.Right)]
    [InlineData(Code.CursorUp | Code.ShiftMask, KeyCode.Up)]
    [InlineData(Code.Home, KeyCode.Home)]
    [InlineData(Code.End, KeyCode.End)]
    [InlineData(Code.PageUp, KeyCode.PageUp)]
    [InlineData(Code.PageDown, KeyCode.PageDown)]
    [InlineData(Code.Insert, KeyCode.Insert)]
    [InlineData(Code.Delete, KeyCode.Delete)]
    public void A_key_without_a_character_keeps_its_name(Code code, KeyCode name) =>
        KeyTranslation.Translate(new Key(code)).Should().Be(new KeyPress(name));

    [Theory]
    [InlineData(Code.A | Code.CtrlMask)]
    [InlineData(Code.D5 | Code.CtrlMask)]
    [InlineData(Code.CursorUp | Code.CtrlMask)]
    [InlineData(Code.A | Code.AltMask)]
    [InlineData(Code.Enter | Code.AltMask)]
    [InlineData(Code.Enter | Code.CtrlMask | Code.AltMask)]
    [InlineData(Code.Tab | Code.ShiftMask)]
    [InlineData(Code.F1)]
    [InlineData(Code.F12)]
    [InlineData(Code.Clear)]
    [InlineData(Code.PrintScreen)]
    public void Chords_and_keys_not_every_terminal_has_mean_nothing(Code code) =>
        KeyTranslation.Translate(new Key(code)).Should().BeNull();
}
