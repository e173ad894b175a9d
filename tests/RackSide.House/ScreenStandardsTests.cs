using System.Text.RegularExpressions;

namespace RackSide.House;

/// <summary>
/// Each of the 26 standards of the screen has a row in docs/screen.md that names what holds it: tests, each with the
/// standard's number written above it, or a benchmark that has it in its text.
/// </summary>
public partial class ScreenStandardsTests
{
    private static readonly string Document = Repository.Read("docs/screen.md");

    private static readonly IReadOnlyList<(string Path, string Text)> Tests = [.. Repository.In(["tests", "docs"], ".cs", ".py", ".sh").Select(file => (file, Repository.Read(file)))];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, 26)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_standard_is_held_by_what_its_row_names(int number)
    {
        var row = Document.Split('\n').Where(l => l.StartsWith($"| S{number} |", StringComparison.Ordinal)).Should().ContainSingle().Subject;
        var named = Named().Matches(row.Split(" | ")[2]).Select(m => m.Groups[1].Value).ToList();

        named.Should().NotBeEmpty();
        named.Should().OnlyContain(name => Tests.Any(t => Holds(t.Text, name) || t.Path.EndsWith("/" + name, StringComparison.Ordinal)));
        named.Should().Contain(name => Tests.Any(t => Tells(t, name, number)), $"something it names says S{number}");
    }

    // The number stands in the few lines above a test, or anywhere in a script.
    private static bool Tells((string Path, string Text) file, string name, int number)
    {
        var at = file.Text.IndexOf($" {name}(", StringComparison.Ordinal);
        var said = new Regex($@"\bS{number}\b", RegexOptions.CultureInvariant);
        return file.Path.EndsWith("/" + name, StringComparison.Ordinal) ? said.IsMatch(file.Text)
            : at >= 0 && said.IsMatch(file.Text[Math.Max(0, file.Text.LastIndexOf("\n\n", at, StringComparison.Ordinal))..at]);
    }

    private static bool Holds(string text, string name) => text.Contains($" {name}(", StringComparison.Ordinal);

    [GeneratedRegex(@"`(\w+(?:\.\w+)?)`")]
    private static partial Regex Named();
}
