namespace RackSide.Files;

/// <summary>How one kind of value is written: its name, an example, and the reading of it.</summary>
/// <param name="Name">What it is, with its article: <c>a length of time</c>.</param>
/// <param name="Right">How to write one, as an instruction: <c>write seconds or minutes, such as 120 s or 2 min</c>.</param>
/// <param name="Parse">The value of a text, or null where it is none.</param>
internal sealed record Form<T>(string Name, string Right, Func<string, T?> Parse)
    where T : struct
{
    /// <summary>The lowest and highest value that is plausible at a rack, as people write them; empty for no limits.</summary>
    public string Limits { get; init; } = "";

    /// <summary>Whether a value is within the limits.</summary>
    public Func<T, bool> Plausible { get; init; } = _ => true;

    /// <summary>The words it may be, where they are so many that the one that was meant helps more than all of them.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>Reads a text; where that fails a mistake says so.</summary>
    public T? Read(YamlScalar written, string field, MistakeList mistakes)
    {
        var value = Parse(written.Text.Trim());
        if (value is { } known && Plausible(known))
        {
            return value;
        }

        mistakes.Add(written.Line, field, Wrong(written.Text.Trim(), value is null), Meant(written.Text.Trim()) ?? Right);
        return null;
    }

    private string? Meant(string text) => Nearest.To(text, Words) is { } meant ? $"did you mean {meant}?" : null;

    private string Wrong(string text, bool unreadable) =>
        text.Length == 0 ? "nothing is written here"
        : unreadable ? $"\"{text}\" is not {Name}"
        : $"\"{text}\" is outside {Limits}";
}

/// <summary>Forms made of a fixed set of words.</summary>
internal static class WordForm
{
    // Of fewer words a near one is chance as often as it is what was meant, and all of them fit in the sentence.
    private const int ManyWords = 5;

    /// <summary>A form that takes any of these words, in capitals or not, with <c>_</c> or a space between their parts.</summary>
    public static Form<T> Of<T>(string name, params (string Word, T Value)[] words)
        where T : struct => new(name, "write " + OneOf(words.Select(w => w.Word)), text =>
        {
            var plain = text.ToLowerInvariant().Replace('_', ' ');
            var found = Array.FindIndex(words, w => w.Word.Replace('_', ' ') == plain);
            return found < 0 ? null : words[found].Value;
        })
        {
            Words = words.Length >= ManyWords ? [.. words.Select(w => w.Word)] : [],
        };

    /// <summary>Words as a choice: <c>a, b or c</c>.</summary>
    public static string OneOf(IEnumerable<string> words)
    {
        var all = words.ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.Take(all.Count - 1))} or {all[^1]}";
    }
}
