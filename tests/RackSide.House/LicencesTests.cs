namespace RackSide.House;

public class LicencesTests
{
    private const string Document = "docs/licences.md";

    [Fact]
    public void The_page_names_every_library_in_the_program_as_its_package_does()
    {
        var written = Licences.Markdown();
        if (Environment.GetEnvironmentVariable("RACKSIDE_ACCEPT") == "1")
        {
            File.WriteAllText(Path.Combine(Repository.Root, Document), written);
        }

        Repository.Read(Document).Should().Be(written, $"{Document} is made from the packages; run with RACKSIDE_ACCEPT=1");
    }

    [Theory]
    [InlineData("src/RackSide", "kiosk/contents.sh")]
    [InlineData("src/RackSide.Server", "kiosk/copyright-gym")]
    public void The_packages_for_boards_carry_the_text_of_every_licence_in_the_program(string project, string texts)
    {
        var script = Repository.Read(texts);
        foreach (var choice in Licences.Names(Licences.Packages(project)))
        {
            choice.Split(" OR ").Should().Contain(one => script.Contains($"License: {one}\n", StringComparison.Ordinal), $"a package comes under {choice}");
        }
    }
}
