using System.Text.RegularExpressions;

namespace RackSide.House;

/// <summary>A C# file as the checks see it.</summary>
/// <param name="File">Its path from the root, with forward slashes.</param>
/// <param name="Text">What it says.</param>
internal sealed partial record Source(string File, string Text)
{
    /// <summary>
    /// The text with comments and plain strings blanked, line by line as before: a name in a sentence is not a use of it.
    /// Interpolated strings stay, because code stands in their holes.
    /// </summary>
    public string Code { get; } = NotCode().Replace(Text, m => m.Value[0] == '$' ? m.Value : Lines().Replace(m.Value, " "));

    /// <summary>Where a pattern is found in the code: file, line and what was found.</summary>
    public IEnumerable<string> Find(Regex pattern) =>
        pattern.Matches(Code).Select(m => At(m.Index, m.Value));

    /// <summary>A place in the file, in words.</summary>
    public string At(int index, string what) => $"{File}:{Code.AsSpan(0, index).Count('\n') + 1}: {what.Trim()}";

    [GeneratedRegex("""
        \$?"{3}[\s\S]*?"{3} | \$?@"(?:[^"]|"")*" | \$?"(?:\\.|[^"\\\n])*" | '(?:\\.|[^'\\\n])+' | //[^\n]* | /\*[\s\S]*?\*/
        """, RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex NotCode();

    [GeneratedRegex("[^\n]")]
    private static partial Regex Lines();
}
