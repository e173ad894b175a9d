namespace RackSide.Pages.Settings;

/// <summary>The keys beside those of the numeric pad, and the page that waits for another one.</summary>
internal static class KeysPage
{
    public static BodyPage All(KeyLayout layout, int chosen) => new ListPage(
        "SETTINGS  keys", [.. KeyLayout.Verbs.Select(v => new ListLine(Name(v), Value: Keys(layout, v)))], chosen)
    {
        Numbered = false,
        Hints = [new("ENTER", "another key"), new("+ -", "up, down"), new("/", "back"), new("!", "stop signs")],
    };

    public static BodyPage Waiting(KeyLayout layout, Verb verb) => new TextPage(
        "SETTINGS  keys",
        [$"{Name(verb)}: {Keys(layout, verb)}", "Press the key it is to have. The numeric pad, Esc and ! keep theirs.", "* gives it back its usual keys; ENTER leaves it as it is."])
    {
        Hints = [new("any key", "take it"), new("*", "usual keys"), new("ENTER", "as it is")],
    };

    private static string Name(Verb verb) => KeyTable.Rows.Single(r => r.Verb == verb) is { Pad: { Length: > 0 } pad } && verb is not Verb.Digit
        ? $"{KeyLayout.WordOf(verb).Replace('_', ' ')} ({pad})"
        : verb is Verb.Digit ? "hold (0)" : KeyLayout.WordOf(verb).Replace('_', ' ');

    private static string Keys(KeyLayout layout, Verb verb) =>
        layout.Others(verb) is { Count: > 0 } keys ? string.Join(' ', keys.Select(KeyNames.Of)) : "none";
}
