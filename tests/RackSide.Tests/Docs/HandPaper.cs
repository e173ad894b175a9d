using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;

namespace RackSide.Tests.Docs;

/// <summary>A line of a session on paper.</summary>
internal sealed record HandLine(
    string Slot, string Exercise, bool WarmUp, decimal? Load, IReadOnlyList<int> Asked, IReadOnlyList<(int Count, bool Slipped)> Done);

/// <summary>A session on paper.</summary>
internal sealed record HandSession(string Date, string Day, string From, string To, IReadOnlyList<HandLine> Lines);

/// <summary>A morning on paper.</summary>
internal sealed record HandMorning(string Date, decimal? Weight, Duration? Slept);

/// <summary>What docs/week-by-hand.md says: the tables and what is set apart, by the heading they stand under.</summary>
internal sealed partial class HandPaper
{
    private const string File = "week-by-hand.md";

    private readonly Dictionary<string, List<string[]>> tables = [];
    private readonly Dictionary<string, List<string>> blocks = [];

    private HandPaper(IEnumerable<string> lines)
    {
        var (under, fenced) = ("", false);
        foreach (var line in lines)
        {
            fenced ^= line.StartsWith("```", StringComparison.Ordinal);
            if (fenced || line.StartsWith("```", StringComparison.Ordinal))
            {
                blocks.TryAdd(under, []);
                blocks[under].AddRange(line.StartsWith("```", StringComparison.Ordinal) ? [] : [line]);
            }
            else if (line.StartsWith('#'))
            {
                under = line.TrimStart('#').Trim();
            }
            else if (line.StartsWith("| ", StringComparison.Ordinal))
            {
                tables.TryAdd(under, []);
                tables[under].Add([.. line.Trim('|').Split('|').Select(cell => cell.Trim())]);
            }
        }
    }

    /// <summary>The lines set apart under a heading.</summary>
    public IReadOnlyList<string> Block(string under) => blocks[under];

    /// <summary>The sessions, oldest first.</summary>
    public IReadOnlyList<HandSession> Sessions =>
        [.. tables.Where(t => SessionHead().IsMatch(t.Key)).Select(t => Session(t.Key.Split(' '), Rows(t.Key)))];

    /// <summary>The mornings, oldest first.</summary>
    public IReadOnlyList<HandMorning> Mornings => [.. Rows("Mornings").Select(r => new HandMorning(r[0], Number(r[1]), Hours(r[2])))];

    /// <summary>The first and the last column of every table of results, which begin with a name.</summary>
    public IReadOnlyDictionary<string, string> Results => tables.Keys
        .Where(k => tables[k][0][0] == "name")
        .SelectMany(Rows).ToDictionary(r => r[0], r => r[^1]);

    /// <summary>Reads it.</summary>
    public static HandPaper Read()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!System.IO.File.Exists(Path.Combine(folder.FullName, "docs", File)))
        {
            folder = folder.Parent!;
        }

        return new HandPaper(System.IO.File.ReadLines(Path.Combine(folder.FullName, "docs", File)));
    }

    private IEnumerable<string[]> Rows(string under) => tables[under].Skip(1);

    private static HandSession Session(string[] head, IEnumerable<string[]> rows) => new(head[0], head[1], head[2], head[3], [.. rows.Select(Line)]);

    private static HandLine Line(string[] row) => new(
        row[0].Split(',')[0],
        row[1],
        row[0].EndsWith("warm-up", StringComparison.Ordinal),
        Number(row[2]),
        [.. row[3].Split(' ').Select(Whole)],
        [.. row[4].Split(' ').Select(d => (Whole(d.TrimEnd('~')), d.EndsWith('~')))]);

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static decimal? Number(string text) => text == "-" ? null : decimal.Parse(text.Split(' ')[0], CultureInfo.InvariantCulture);

    private static Duration? Hours(string text) =>
        text == "-" ? null : Duration.FromMinutes((60 * Whole(text.Split(':')[0])) + Whole(text.Split(':')[1]));

    [GeneratedRegex(@"^\d{4}-\d\d-\d\d ")]
    private static partial Regex SessionHead();
}
