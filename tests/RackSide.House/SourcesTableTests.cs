namespace RackSide.House;

public class SourcesTableTests
{
    private const string Heads = "| rule or formula | where | source | status | test |\n|---|---|---|---|---|\n";
    private const string File = "docs/sources.md";

    [Fact]
    public void Every_number_with_a_source_has_a_test_that_exists()
    {
        var markdown = Repository.Read(File);
        SourcesTable.Rows(markdown).Should().NotBeEmpty($"{File} is there to be checked");
        SourcesTable.Violations(markdown, SourcesTable.TestsIn(Repository.Sources("tests")), Repository.Files).Should().BeEmpty();
    }

    [Theory]
    [InlineData("| a | `Mass.cs` | b | c | none yet |", "names no test")]
    [InlineData("| a | `Mass.cs` | b | c | `There_is_none` |", "no test 'There_is_none'")]
    [InlineData("| a | `Mass.cs` | b | c | `Given.There_is_none` |", "no test 'Given.There_is_none'")]
    [InlineData("| a | `Gone.cs` | b | c | `There_is_one` |", "no file 'Gone.cs'")]
    [InlineData("| a | `Mass.cs` |", "names no test")]
    public void A_row_that_is_not_so_is_found(string row, string because) =>
        Check(row).Should().ContainSingle().Which.Should().StartWith("row 3: ").And.Contain(because);

    [Theory]
    [InlineData("| a | `Measures/Mass.cs` | b | c | `There_is_one` |")]
    [InlineData("| a | `Mass.cs`, anywhere | b | c | `Given.There_is_one`, `Given` |")]
    public void A_row_that_is_so_passes(string row) => Check(row).Should().BeEmpty();

    private static IEnumerable<string> Check(string row)
    {
        var tests = SourcesTable.TestsIn([new Source("t.cs", "public class Given { [Fact] public void There_is_one() { } }")]);
        return SourcesTable.Violations(Heads + row + "\n", tests, ["src/RackSide.Training/Measures/Mass.cs"]);
    }
}
