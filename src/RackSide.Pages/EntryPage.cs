namespace RackSide.Pages;

/// <summary>A page with one thing to type.</summary>
/// <param name="Title">Where we are; the left of the top line.</param>
/// <param name="Question">What is asked.</param>
/// <param name="Typed">What is typed so far.</param>
/// <param name="Room">The most characters that may be typed.</param>
public sealed record EntryPage(string Title, string Question, string Typed, int Room) : BodyPage(Title)
{
    /// <summary>The most characters of a number.</summary>
    public const int NumberRoom = 8;

    /// <summary>What stands after the box: a unit.</summary>
    public string Unit { get; init; } = "";

    /// <summary>What stands under the box; may be left out on a page too small for it.</summary>
    public string Below { get; init; } = "";

    /// <summary>Whether letters may be typed.</summary>
    public bool TakesLetters { get; init; }

    private protected override Telling Tells => new() { Typing = Typed.Length > 0, TakesLetters = TakesLetters };

    /// <summary>The page.</summary>
    public override Page Draw(PageSize size)
    {
        IReadOnlyList<BodyLine> box = [new($"> [{Typed.PadRight(Room)}] {Unit}".TrimEnd(), Look.Bold | Look.Now, Active: true)];
        IReadOnlyList<BodyLine>[] parts = [BodyText.Lines(Question, size), box, BodyText.Lines(Below, size)];
        var spaced = BodyText.Stack(parts, spaced: true);
        var body = spaced.Count <= BodyText.Height(size) ? spaced : BodyText.Stack(parts, spaced: false);
        return Draw(size, body, "> [".Length + Typed.Length);
    }

    /// <summary>What stands in the box after a key of a number: a digit, a decimal mark, Backspace; null where it is none of these.</summary>
    public static string? TypeNumber(string typed, KeyPress key) => key switch
    {
        { Code: KeyCode.Backspace } => typed.Length == 0 ? null : typed[..^1],
        _ when typed.Length >= NumberRoom => null,
        { Code: KeyCode.Character, Character: '.' or ',' } => typed + key.Character,
        _ when key.Digit() is { } digit => typed + digit,
        _ => null,
    };
}
