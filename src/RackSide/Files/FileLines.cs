namespace RackSide.Files;

/// <summary>Lines of a file that stand together.</summary>
/// <param name="First">The first, from 0.</param>
/// <param name="Last">The last, from 0.</param>
internal sealed record LineSpan(int First, int Last)
{
    public int Count => Last - First + 1;
}

/// <summary>A YAML file as lines, which can be replaced without touching the others.</summary>
internal sealed class FileLines
{
    private readonly string end;

    /// <summary>The lines of a text, with the line ends it has.</summary>
    public FileLines(string text)
        : this([.. text.Split('\n').Select(l => l.TrimEnd('\r'))], text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n")
    {
    }

    private FileLines(IReadOnlyList<string> lines, string end) => (Lines, this.end) = (lines, end);

    /// <summary>The lines.</summary>
    public IReadOnlyList<string> Lines { get; }

    /// <summary>The text.</summary>
    public string Text => string.Join(end, Lines);

    /// <summary>The lines of an outermost field, without the comments and blank lines that lead to the next; null where it is not there.</summary>
    public LineSpan? Block(string name)
    {
        var first = Lines.ToList().FindIndex(l => l.StartsWith(name + ":", StringComparison.Ordinal));
        if (first < 0)
        {
            return null;
        }

        var last = first;
        for (var i = first + 1; i < Lines.Count && !BeginsAField(Lines[i]); i++)
        {
            last = IsText(Lines[i]) || (IsComment(Lines[i]) && Lines[i][0] == ' ') ? i : last;
        }

        return new(first, last);
    }

    /// <summary>The entries under a field's first line, each with the comments that stand under its own lines; empty where it stands on one line.</summary>
    public IReadOnlyList<LineSpan> Entries(LineSpan block)
    {
        var text = Enumerable.Range(block.First + 1, block.Last - block.First).Where(i => IsText(Lines[i])).ToList();
        if (text.Count == 0 || EntryLines.ValueOf(Lines[block.First]).Length > 0)
        {
            return [];
        }

        var indent = Depth(Lines[text[0]]);
        var starts = text.Where(i => Depth(Lines[i]) == indent && (Lines[i][indent] == '-' || Lines[text[0]][indent] != '-')).ToList();
        return [.. starts.Select((start, i) => new LineSpan(start, i + 1 < starts.Count ? starts[i + 1] - 1 : block.Last))];
    }

    /// <summary>The spaces before an entry.</summary>
    public string Indent(LineSpan entry) => new(' ', Depth(Lines[entry.First]));

    /// <summary>The file with other lines in place of these.</summary>
    public FileLines Replace(LineSpan span, IReadOnlyList<string> lines) =>
        new([.. Lines.Take(span.First), .. lines, .. Lines.Skip(span.Last + 1)], end);

    /// <summary>The file with lines at its end.</summary>
    public FileLines Append(IReadOnlyList<string> lines)
    {
        var all = Lines.Reverse().SkipWhile(l => l.Length == 0).Reverse();
        return new([.. all, .. lines, ""], end);
    }

    private static int Depth(string line) => line.Length - line.TrimStart(' ').Length;

    private static bool IsComment(string line) => line.TrimStart(' ').StartsWith('#');

    private static bool IsText(string line) => line.Trim().Length > 0 && !IsComment(line);

    private static bool BeginsAField(string line) => line.Length > 0 && (char.IsAsciiLetter(line[0]) || line[0] is '"' or '\'' || line.StartsWith("...", StringComparison.Ordinal));
}
