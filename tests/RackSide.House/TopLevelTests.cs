namespace RackSide.House;

public class TopLevelTests
{
    [Fact]
    public void The_visible_top_level_is_as_it_was_drawn() => Visible(Repository.Files).Should().BeEquivalentTo(
        ["README.md", "DEVELOPERS.md", "LICENSE", "RackSide.sln", "demo", "docs", "kiosk", "src", "tests"]);

    [Fact]
    public void A_copy_without_history_is_read_alike() => Visible(Repository.FromDisk())
        .Should().BeEquivalentTo(Visible(Repository.Files));

    [Fact]
    public void A_stray_entry_is_seen_and_a_hidden_one_is_not() =>
        Visible(["notes.txt", "global.json", "src/a.cs", "src/b.cs", ".ci/run", ".gitignore"])
            .Should().Equal("notes.txt", "global.json", "src");

    private static IEnumerable<string> Visible(IEnumerable<string> files) =>
        files.Select(file => file.Split('/')[0]).Distinct().Where(name => !name.StartsWith('.'));
}
