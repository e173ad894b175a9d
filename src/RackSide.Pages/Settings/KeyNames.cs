namespace RackSide.Pages.Settings;

/// <summary>What a key is called in the settings: its character, or a name.</summary>
public static class KeyNames
{
    private static readonly (string Name, KeyPress Key)[] Named =
    [
        ("enter", KeyPress.Enter), ("space", KeyPress.Of(' ')), ("tab", new(KeyCode.Tab)), ("backspace", new(KeyCode.Backspace)),
        ("esc", KeyPress.Escape), ("up", new(KeyCode.Up)), ("down", new(KeyCode.Down)), ("left", new(KeyCode.Left)), ("right", new(KeyCode.Right)),
        ("home", new(KeyCode.Home)), ("end", new(KeyCode.End)), ("pgup", new(KeyCode.PageUp)), ("pgdn", new(KeyCode.PageDown)),
        ("ins", new(KeyCode.Insert)), ("del", new(KeyCode.Delete)),
    ];

    /// <summary>The key of a name; null where there is none.</summary>
    public static KeyPress? Find(string name) =>
        name.Length == 1 && !char.IsControl(name[0]) ? Folded(KeyPress.Of(name[0]))
        : Named.Where(n => n.Name == name.ToLowerInvariant()).Select(n => (KeyPress?)n.Key).FirstOrDefault();

    /// <summary>The name of a key.</summary>
    public static string Of(KeyPress key) => Named.Where(n => n.Key == key).Select(n => n.Name).FirstOrDefault() ?? key.Character.ToString();

    /// <summary>The same key in lower case: capitals are the same keys.</summary>
    public static KeyPress Folded(KeyPress key) => key with { Character = char.ToLowerInvariant(key.Character) };
}
