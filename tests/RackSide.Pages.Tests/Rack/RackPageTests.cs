using RackSide.Pages.Rack;

namespace RackSide.Pages.Tests.Rack;

public class RackPageTests
{
    // Standard S17 of docs/screen.md.
    [Theory]
    [MemberData(nameof(RackPages.AtAllSizes), MemberType = typeof(RackPages))]
    public void Each_page_is_as_expected(string name, int columns, int rows) =>
        Expected.Match(RackPages.Drawn(name, columns, rows), $"rack-{name}");

    // Standard S18 of docs/screen.md.
    [Theory]
    [MemberData(nameof(RackPages.AtAllSizes), MemberType = typeof(RackPages))]
    public void Each_page_draws_with_safe_glyphs_only(string name, int columns, int rows) =>
        SafeGlyphs.Unsafe(RackPages.Drawn(name, columns, rows)).Should().BeEmpty();

    [Theory]
    [MemberData(nameof(RackPages.AtAllSizes), MemberType = typeof(RackPages))]
    public void The_cursor_stands_on_a_line_that_says_something(string name, int columns, int rows)
    {
        var page = RackPages.Drawn(name, columns, rows);
        page.Text.Split('\n')[page.CursorRow].Should().NotBeNullOrWhiteSpace();
    }

    // Standard S13 of docs/screen.md.
    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_rest_clock_fills_30_to_45_in_a_hundred_of_the_rows(int columns, int rows)
    {
        var lines = RackPages.Drawn("rest", columns, rows).Text.Split('\n');
        var clock = lines.Count(l => l.Contains('█') && !l.Contains('░'));
        (clock * 100.0 / rows).Should().BeInRange(30, 45);
    }

    [Fact]
    public void Advice_that_does_not_fit_in_a_rest_says_that_it_goes_on() =>
        RackPages.Drawn("rest-longer-rest-offered", 40, 15).Text.Should().MatchRegex(@"\nadvice: rest longer first: .+ \.\.\.\n");

    [Fact]
    public void The_document_of_the_keys_is_made_from_the_key_table() =>
        Docs.Match("keys.md", string.Join('\n', [
            "# The keys",
            "",
            "The numeric pad alone reaches everything. This page is made from the key table in `src/RackSide.Pages/KeyTable.cs`;",
            "run the tests of RackSide.Pages with `RACKSIDE_ACCEPT=1` to make it anew.",
            "",
            .. HelpLines.Markdown(),
            ""]));

    [Theory]
    [InlineData(1, 1)]
    [InlineData(10, 3)]
    [InlineData(20, 5)]
    public void No_page_throws_on_a_window_that_is_being_squeezed(int columns, int rows)
    {
        var names = RackPages.AtAllSizes.Select(row => (string)((object[])row)[0]).Distinct().ToList();
        names.Should().HaveCountGreaterThan(25);
        foreach (var name in names)
        {
            var draw = () => RackPages.Drawn(name, columns, rows);
            draw.Should().NotThrow(name);
        }
    }
}
