namespace RackSide.Files;

/// <summary>Changes one field of a house-rules file and leaves every other line, comments among them, as its owner wrote it.</summary>
internal static class GymLines
{
    /// <summary>The text with a field written in these lines, in its old place or at the end.</summary>
    /// <param name="text">The file.</param>
    /// <param name="field">The field's name.</param>
    /// <param name="written">Its new lines, beginning with the name; none takes the field away.</param>
    public static string Set(string text, string field, params string[] written)
    {
        var lines = text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').ToList();
        var at = lines.FindIndex(l => l.StartsWith(field + ":", StringComparison.Ordinal));
        if (at < 0)
        {
            return string.Join('\n', [.. lines, .. written, ""]);
        }

        // A field's value may go on over indented lines, and over the items of a list, which need no indent.
        var end = at + 1;
        while (end < lines.Count && lines[end] is [' ' or '\t', ..] or ['-', ' ', ..])
        {
            end++;
        }

        lines.RemoveRange(at, end - at);
        lines.InsertRange(at, written);
        return string.Join('\n', lines) + "\n";
    }
}
