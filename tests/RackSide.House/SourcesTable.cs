using System.Text.RegularExpressions;

namespace RackSide.House;

/// <summary>
/// docs/sources.md: a table (or several) with the columns <c>rule or formula | where | source | status | test</c>. In the
/// columns "where" and "test", names of the code stand in backticks.
/// </summary>
internal static partial class SourcesTable
{
    /// <summary>What the table says that is not so: a row without a test, a test or a file that does not exist.</summary>
    public static IEnumerable<string> Violations(string markdown, IReadOnlySet<string> tests, IReadOnlyCollection<string> files)
    {
        foreach (var (row, cells) in Rows(markdown))
        {
            var named = Backticked().Matches(cells["test"]).Select(m => m.Groups["name"].Value).ToList();
            if (named.Count == 0)
            {
                yield return $"row {row}: names no test in backticks";
            }

            foreach (var test in named.Where(name => !name.Split('.').All(tests.Contains)))
            {
                yield return $"row {row}: there is no test '{test}'";
            }

            foreach (var file in Backticked().Matches(cells["where"]).Select(m => m.Groups["name"].Value)
                .Where(name => name.EndsWith(".cs", StringComparison.Ordinal))
                .Where(name => !files.Any(f => f.EndsWith("/" + name, StringComparison.Ordinal))))
            {
                yield return $"row {row}: there is no file '{file}'";
            }
        }
    }

    /// <summary>Every test class and test method that these sources declare.</summary>
    public static IReadOnlySet<string> TestsIn(IEnumerable<Source> sources) =>
        sources.SelectMany(s => Declared().Matches(s.Code).Select(m => m.Groups["name"].Value)).ToHashSet();

    /// <summary>The rows of every table that has a column "test", by the number of their line.</summary>
    internal static IEnumerable<(int Row, IReadOnlyDictionary<string, string> Cells)> Rows(string markdown)
    {
        string[]? heads = null;
        foreach (var (line, number) in markdown.Split('\n').Select((line, i) => (line.Trim(), i + 1)))
        {
            if (!line.StartsWith('|'))
            {
                heads = null;
                continue;
            }

            var cells = line.Trim('|').Split('|').Select(cell => cell.Trim()).ToArray();
            if (heads is null)
            {
                heads = [.. cells.Select(cell => cell.ToLowerInvariant())];
            }
            else if (heads.Contains("test") && !cells.All(cell => cell.Trim('-', ':').Length == 0))
            {
                yield return (number, heads.Append("where").Distinct()
                    .Select((head, i) => (head, cell: i < cells.Length ? cells[i] : "")).ToDictionary(c => c.head, c => c.cell));
            }
        }
    }

    [GeneratedRegex("`(?<name>[^`]+)`")]
    private static partial Regex Backticked();

    [GeneratedRegex(@"\b(?:class|void|Task)\s+(?<name>\w+)")]
    private static partial Regex Declared();
}
