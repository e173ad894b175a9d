using System.Xml.Linq;

namespace RackSide.House;

public class ArrowsTests
{
    public static TheoryData<string> Assemblies => [.. Arrows.Allowed.Keys];

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void An_assembly_uses_only_what_the_table_allows(string assembly)
    {
        var uses = Arrows.UsesOf(assembly).ToList();
        uses.Should().Contain("System.Runtime", "the check must have read the assembly");
        Arrows.Violations(assembly, uses).Should().BeEmpty();
    }

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void A_project_file_asks_only_for_what_the_table_allows(string assembly)
    {
        var name = Arrows.ProjectOf(assembly);
        var declared = Arrows.Declared(XDocument.Parse(Repository.Read($"src/{name}/{name}.csproj"))).ToList();
        declared.Should().NotBeEmpty();
        Arrows.Violations(assembly, declared).Should().BeEmpty();
    }

    [Theory]
    [InlineData("RackSide.Training", "LiteDB")]
    [InlineData("RackSide.Training", "RackSide.Pages")]
    [InlineData("RackSide.Training", "YamlDotNet")]
    [InlineData("RackSide.Logbook", "RackSide.Pages")]
    [InlineData("RackSide.Logbook", "Terminal.Gui")]
    [InlineData("RackSide.Pages", "Terminal.Gui")]
    [InlineData("RackSide.Pages", "LiteDB")]
    [InlineData("RackSide.Pages", "RackSide.Logbook")]
    [InlineData("RackSide.Screens", "LiteDB")]
    [InlineData("RackSide.Screens", "RackSide.Logbook")]
    [InlineData("rackside", "LiteDB")]
    [InlineData("rackside", "Npgsql")]
    [InlineData("rackside", "rackside-gym")]
    [InlineData("rackside-gym", "RackSide.Training")]
    [InlineData("rackside-gym", "RackSide.Logbook")]
    [InlineData("rackside", "Terminal.Gui")]
    public void A_forbidden_use_is_found(string assembly, string used) =>
        Arrows.Violations(assembly, ["System.Runtime", used])
            .Should().Equal($"{assembly} may not use {used}");

    [Fact]
    public void What_a_project_file_asks_for_is_read_whole()
    {
        var made = XDocument.Parse("""
            <Project><ItemGroup>
              <PackageReference Include="LiteDB" />
              <PackageReference Include="Left.Out" ExcludeAssets="all" />
              <ProjectReference Include="../RackSide.Pages/RackSide.Pages.csproj" />
            </ItemGroup></Project>
            """);
        Arrows.Declared(made).Should().Equal("LiteDB", "RackSide.Pages");
    }

    [Fact]
    public void Every_project_under_src_has_a_line_in_the_table() =>
        Repository.In(["src"], ".csproj").Select(file => Path.GetFileNameWithoutExtension(file))
            .Should().BeEquivalentTo(Arrows.Allowed.Keys.Select(Arrows.ProjectOf));

    /// <summary>
    /// The oracle compares plans with a solver that is a download of several hundred megabytes. It is run by hand
    /// (docs/performance.md), so that nobody who builds or tests the solution has to fetch it.
    /// </summary>
    private const string RunByHand = "tests/RackSide.Oracle/RackSide.Oracle.csproj";

    [Fact]
    public void Every_project_stands_in_the_solution_but_the_oracle()
    {
        var solution = Repository.Read("RackSide.sln").Replace('\\', '/');
        Repository.In(["src", "tests"], ".csproj").Where(file => !solution.Contains(file)).Should().Equal(RunByHand);
    }
}
