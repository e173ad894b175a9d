using RackSide.Training.Measures;

namespace RackSide.Files;

/// <summary>The lines of an entry that a person wrote, with new values put into them.</summary>
internal static class EntryLines
{
    /// <summary>
    /// The old lines where they say the same, or with the new value and the old comment; fields that are gone are taken out
    /// and new ones come last.
    /// </summary>
    /// <param name="old">The lines as they stand.</param>
    /// <param name="lines">The lines as a new file would have them, at two spaces.</param>
    /// <param name="indent">The spaces before this list's entries.</param>
    public static IEnumerable<string> Merge(IReadOnlyList<string> old, IReadOnlyList<string> lines, string indent)
    {
        var (before, after) = (Fields(old), Fields([.. Indented(lines, indent)]));
        List<string> merged = [];
        foreach (var (name, told) in before)
        {
            if (after.FirstOrDefault(f => f.Name == name) is { Name: not null } now)
            {
                merged.AddRange(SaysTheSame(told, now.Lines) ? told : Renewed(told, now.Lines));
            }
            else
            {
                merged.AddRange(told.Skip(1).Where(IsComment));
            }
        }

        merged.AddRange(after.Where(f => before.TrueForAll(b => b.Name != f.Name)).SelectMany(f => f.Lines));
        return merged;
    }

    /// <summary>Lines of a new file at the indentation of a list.</summary>
    public static IEnumerable<string> Indented(IEnumerable<string> lines, string indent) => lines.Select(l => indent + l[2..]);

    /// <summary>What stands after a field's colon, without a comment.</summary>
    public static string ValueOf(string line)
    {
        var plain = line[..^CommentOf(line).Length].TrimEnd();
        var colon = plain.IndexOf(": ", StringComparison.Ordinal);
        return colon < 0 ? "" : plain[(colon + 2)..].Trim();
    }

    /// <summary>The comment at the end of a line, with its <c>#</c>; empty where there is none.</summary>
    public static string CommentOf(string line)
    {
        var quote = '\0';
        for (var i = 0; i < line.Length; i++)
        {
            quote = quote != '\0' ? (line[i] == quote ? '\0' : quote) : line[i] is '"' or '\'' ? line[i] : '\0';
            if (quote == '\0' && line[i] == '#' && (i == 0 || line[i - 1] == ' '))
            {
                return line[i..];
            }
        }

        return "";
    }

    /// <summary>Fields with the lines that belong to them, the dash of a list before the first.</summary>
    private static List<(string Name, IReadOnlyList<string> Lines)> Fields(IReadOnlyList<string> lines)
    {
        List<(string Name, IReadOnlyList<string> Lines)> fields = [];
        var depth = Start(lines[0]);
        foreach (var line in lines)
        {
            var begins = line.Trim().Length > 0 && !IsComment(line) && Start(line) == depth;
            if (begins || fields.Count == 0)
            {
                fields.Add((EntryKeys.FieldOf(line), [line]));
            }
            else
            {
                fields[^1] = fields[^1] with { Lines = [.. fields[^1].Lines, line] };
            }
        }

        return fields;
    }

    private static bool SaysTheSame(IReadOnlyList<string> one, IReadOnlyList<string> other) =>
        one.Where(IsText).Select(Bare).SequenceEqual(other.Where(IsText).Select(Bare));

    private static IEnumerable<string> Renewed(IReadOnlyList<string> old, IReadOnlyList<string> now)
    {
        var comment = CommentOf(old[0]);
        var head = old[0][..Start(old[0])] + now[0][Start(now[0])..];
        return [comment.Length > 0 ? $"{head}  {comment}" : head, .. now.Skip(1), .. old.Skip(1).Where(IsComment)];
    }

    private static string Bare(string line) => string.Concat(line[..^CommentOf(line).Length].Where(c => c is not ' ' and not '-'));

    private static int Start(string line) => line.TakeWhile(c => c is ' ' or '-').Count();

    private static bool IsComment(string line) => line.TrimStart(' ').StartsWith('#');

    private static bool IsText(string line) => line.Trim().Length > 0 && !IsComment(line);
}

/// <summary>What an entry is known by.</summary>
internal static class EntryKeys
{
    /// <summary>Of an entry's first line: its name, its mass, or its word.</summary>
    public static string Of(string line)
    {
        var text = line[..^EntryLines.CommentOf(line).Length].Trim().TrimStart('-').Trim();
        var value = text.StartsWith("name:", StringComparison.Ordinal) ? text["name:".Length..] : text.Split(':')[0];
        var said = Unquoted(value.Trim());
        return YamlValues.Mass.Parse(said) is { } mass && !text.StartsWith("name:", StringComparison.Ordinal) ? KitField.Exactly(mass) : said;
    }

    /// <summary>The name of the field that a line begins, or its only word.</summary>
    public static string FieldOf(string line)
    {
        var text = line[..^EntryLines.CommentOf(line).Length].Trim().TrimStart('-').Trim();
        return text.Contains(':', StringComparison.Ordinal) ? MassOrWord(text.Split(':')[0].Trim()) : "";
    }

    private static string MassOrWord(string text) => YamlValues.Mass.Parse(text) is { } mass ? KitField.Exactly(mass) : text;

    private static string Unquoted(string text)
    {
        var mistakes = new MistakeList("");
        return YamlText.Read(text, mistakes) is YamlScalar scalar && !mistakes.Any ? scalar.Text : text;
    }
}
