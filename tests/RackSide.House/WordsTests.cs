using System.Text.RegularExpressions;

namespace RackSide.House;

/// <summary>Words that do not belong in the tree. They are put together here from halves, or this file would be found too.</summary>
public class WordsTests
{
    private static readonly Regex Elsewhere = Any(RegexOptions.IgnoreCase,
        "seed " + "document", "trans" + "cript", "/" + "work/", "/" + "farm/", @"\." + "library", "/ro" + @"ot/\w");

    private static readonly Regex Unfinished = Any(RegexOptions.None,
        @"\bTO" + @"DO\b", @"\bFIX" + @"ME\b", @"\bHA" + @"CK\b", "NotImplemented" + "Exception", @"Thread\.Sl" + "eep", "Skip *=" + " *\"");

    [Fact]
    public void No_file_speaks_of_the_place_it_was_written_in() => Find(
        Elsewhere, Repository.In(["src", "tests", "docs", "demo", "kiosk", "README.md", "DEVELOPERS.md", ".ci"])
            .Where(file => Path.GetExtension(file) is not (".png" or ".gif" or ".jpg" or ".db"))).Should().BeEmpty();

    [Fact]
    public void No_source_is_unfinished_sleeping_or_left_out() =>
        Find(Unfinished, Repository.In(["src", "tests"], ".cs")).Should().BeEmpty();

    [Theory]
    [InlineData("as the Seed Docu" + "ment has it")]
    [InlineData("a trans" + "cript of it")]
    [InlineData("kept in /wo" + "rk/main")]
    [InlineData("see .lib" + "rary/notes")]
    public void A_word_from_elsewhere_is_found(string text) => Elsewhere.IsMatch(text).Should().BeTrue();

    [Theory]
    [InlineData("// TO" + "DO later")]
    [InlineData("throw new NotImplemented" + "Exception();")]
    [InlineData("Thread.Sl" + "eep(1);")]
    [InlineData("[Fact(Skip " + "= \"later\")]")]
    public void An_unfinished_line_is_found(string text) => Unfinished.IsMatch(text).Should().BeTrue();

    private static Regex Any(RegexOptions options, params string[] patterns) => new(string.Join('|', patterns), options);

    private static IEnumerable<string> Find(Regex pattern, IEnumerable<string> files) =>
        from file in files
        from line in Repository.Read(file).Split('\n').Select((text, i) => (Text: text, Number: i + 1))
        where pattern.IsMatch(line.Text)
        select $"{file}:{line.Number}: {line.Text.Trim()}";
}
