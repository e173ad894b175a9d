namespace RackSide.Pages.Lifters;

/// <summary>
/// Typing a name with a keyboard or with the pad alone: <c>+</c> and <c>-</c> turn the last letter, <c>*</c> begins the next
/// one, <c>.</c> takes it away.
/// </summary>
/// <param name="Text">What is typed so far.</param>
/// <param name="Turning">Whether the last letter came from turning, so that <c>-</c> turns it back and is no hyphen.</param>
public readonly record struct NameTyping(string Text, bool Turning = false)
{
    /// <summary>The most letters; a longer name would crowd the top line at 50 columns.</summary>
    public const int Room = 20;

    /// <summary>What is said to a character that no name has.</summary>
    public const string LettersOnly = "A name takes letters, a space, - and '.";

    /// <summary>What is said when there is no more room.</summary>
    public const string Full = "The name is as long as it can be.";

    // Console fonts of the Latin family end here; what lies beyond may be drawn as a blank.
    private const char LastLatin = '\u017f';
    private const string Wheel = "ABCDEFGHIJKLMNOPQRSTUVWXYZ -'";

    /// <summary>What the hints say of the pad.</summary>
    public static IReadOnlyList<KeyHint> Hints { get; } = [new("+ -", "turn letter"), new("*", "next"), new(".", "delete")];

    /// <summary>The name after a key; with one sentence where it stays as it was, null for a key that is no typing at all.</summary>
    public (NameTyping Name, string? Said)? Press(KeyPress key) => key switch
    {
        { Code: KeyCode.Backspace or KeyCode.Delete } or { Code: KeyCode.Character, Character: '.' or ',' } =>
            Text.Length > 0 ? (new NameTyping(Text[..^1]), null) : null,
        { Code: KeyCode.Character, Character: '+' } => (Turned(1), null),
        { Code: KeyCode.Character, Character: '-' } when Turning || Text.Length == 0 => (Turned(-1), null),
        { Code: KeyCode.Character, Character: '*' } => Added(Wheel[0]),
        { Code: KeyCode.Character } => MayStand(key.Character) ? Typed(key.Character) : (this, LettersOnly),
        _ => null,
    };

    private (NameTyping, string?) Added(char letter) => Text.Length == Room ? (this, Full) : (new(Text + Cased(Text, letter), Turning: true), null);

    private (NameTyping, string?) Typed(char letter) => Text.Length == Room ? (this, Full) : (new(Text + letter), null);

    private NameTyping Turned(int by)
    {
        var (before, at) = Text.Length == 0 ? ("", by > 0 ? -1 : 0) : (Text[..^1], Wheel.IndexOf(char.ToUpperInvariant(Text[^1]), StringComparison.Ordinal));
        return new(before + Cased(before, Wheel[(at + by + Wheel.Length) % Wheel.Length]), Turning: true);
    }

    // A capital where a name or a part of one begins.
    private static char Cased(string before, char letter) => before.Length == 0 || before[^1] is ' ' or '-' ? letter : char.ToLowerInvariant(letter);

    private static bool MayStand(char character) => character is ' ' or '-' or '\'' || (char.IsLetter(character) && character <= LastLatin);
}
