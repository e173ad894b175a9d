namespace RackSide.House;

public class LinksTests
{
    private static readonly Markdowns Documents = new(
        Repository.In(["README.md", "DEVELOPERS.md", "docs", "demo", "kiosk"], ".md").Select(file => (file, Repository.Read(file))),
        Repository.Files);

    [Fact]
    public void Every_link_leads_to_a_file_and_a_heading_that_exist() => string.Join('\n', Documents.Broken()).Should().BeEmpty();

    [Fact]
    public void Every_page_is_found_by_following_links_from_the_first() => string.Join(", ", Documents.Unreachable("README.md")).Should().BeEmpty();

    [Fact]
    public void Every_picture_is_shown_by_some_page() =>
        Repository.In(["docs"], ".png").Except(Documents.Targets()).Should().BeEmpty("a picture that nobody sees grows old unseen");

    [Fact]
    public void A_link_that_leads_nowhere_is_found() => new Markdowns(
        [
            ("a.md", "# Top\n[b](docs/b.md#one-two) [b](docs/b.md#two) [gone](gone.md) [top](#top) [away](https://example.org/x)"),
            ("docs/b.md", "## One, two\n[up](../a.md) [no](../a.md#bottom) [folder](../docs)"),
        ],
        ["a.md", "docs/b.md"]).Broken().Should().Equal(
            "a.md:2: docs/b.md#two leads to no heading", "a.md:2: gone.md leads to no file", "docs/b.md:2: ../a.md#bottom leads to no heading");

    [Fact]
    public void A_page_that_nothing_leads_to_is_found() => new Markdowns(
        [("a.md", "[b](b.md)"), ("b.md", ""), ("c.md", "[a](a.md)")], ["a.md", "b.md", "c.md"]).Unreachable("a.md").Should().Equal("c.md");
}
