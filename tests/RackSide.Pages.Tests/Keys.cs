using NodaTime;

namespace RackSide.Pages.Tests;

/// <summary>
/// Keys as a test writes them, apart by blanks: <c>3 ENTER * + / ESC TAB BACK UP DOWN LEFT RIGHT HOME END PGUP PGDN INS DEL
/// SPACE</c>; anything else is typed letter by letter, so <c>Juno SPACE 7</c> is six presses.
/// </summary>
public static class Keys
{
    private static readonly Dictionary<string, KeyPress> Named = new(StringComparer.Ordinal)
    {
        ["ENTER"] = KeyPress.Enter,
        ["ESC"] = KeyPress.Escape,
        ["TAB"] = new(KeyCode.Tab),
        ["BACK"] = new(KeyCode.Backspace),
        ["UP"] = new(KeyCode.Up),
        ["DOWN"] = new(KeyCode.Down),
        ["LEFT"] = new(KeyCode.Left),
        ["RIGHT"] = new(KeyCode.Right),
        ["HOME"] = new(KeyCode.Home),
        ["END"] = new(KeyCode.End),
        ["PGUP"] = new(KeyCode.PageUp),
        ["PGDN"] = new(KeyCode.PageDown),
        ["INS"] = new(KeyCode.Insert),
        ["DEL"] = new(KeyCode.Delete),
        ["SPACE"] = KeyPress.Of(' '),
    };

    /// <summary>The presses that a line of keys stands for.</summary>
    public static IEnumerable<KeyPress> Parse(string keys) => keys
        .Split(' ', StringSplitOptions.RemoveEmptyEntries)
        .SelectMany(word => Named.TryGetValue(word, out var key) ? [key] : word.Select(KeyPress.Of));

    /// <summary>Presses a line of keys in a conversation, all at one instant.</summary>
    public static void Press(this IConversation conversation, string keys, Instant now)
    {
        foreach (var key in Parse(keys))
        {
            conversation.Press(key, now);
        }
    }
}
