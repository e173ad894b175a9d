namespace RackSide.Pages.Plain;

/// <summary>What a typed line stands for.</summary>
public static class PlainEntry
{
    /// <summary>Says the page again.</summary>
    public const string Again = "again";

    /// <summary>What is answered to a line that means nothing.</summary>
    public const string Refusal =
        "not understood, nothing has changed; type keys such as 3, *- or /5, a word (help, menu, undo, back, stop, leave, again), or only ENTER";

    private static readonly Dictionary<string, KeyPress> Words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["help"] = KeyPress.Of('?'),
        ["menu"] = KeyPress.Of('/'),
        ["undo"] = KeyPress.Of('u'),
        ["back"] = KeyPress.Escape,
        ["stop"] = KeyPress.Of('!'),
        ["leave"] = KeyPress.Of('q'),
        ["quit"] = KeyPress.Of('q'),
    };

    /// <summary>
    /// The presses of a line: ENTER for an empty one, a word's key, or its characters one after the other. Where letters
    /// are typed, all of it. Null for a line that means nothing, of which no part is pressed.
    /// </summary>
    public static IReadOnlyList<KeyPress>? Presses(string line, Telling tells) =>
        tells.TakesLetters ? [.. line.Select(KeyPress.Of), KeyPress.Enter]
        : line.Trim() is not { Length: > 0 } typed ? [KeyPress.Enter]
        : Words.TryGetValue(typed, out var word) ? [word]
        : IsKeys(typed) ? [.. typed.Where(c => c != ' ').Select(KeyPress.Of)]
        : null;

    // Two letters together are a word mistyped rather than two verbs.
    private static bool IsKeys(string typed) =>
        typed.All(c => c == ' ' || KeyTable.VerbOf(KeyPress.Of(c)) is not null) && typed.Count(char.IsLetter) <= 1;
}
