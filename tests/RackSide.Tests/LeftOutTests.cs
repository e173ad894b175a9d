using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace RackSide.Tests;

/// <summary>What src/RackSide/LeftOut.xml names is really there: a library that renamed it would bring all of it back unseen.</summary>
public partial class LeftOutTests
{
    private const BindingFlags Any = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    [Fact]
    public void Every_member_that_is_left_out_of_the_native_program_is_one_of_its_library()
    {
        var named = Named(XDocument.Load(Path.Combine(Root(), "src", "RackSide", "LeftOut.xml"))).ToList();

        named.Should().HaveCountGreaterThan(10);
        named.Where(n => !Knows(n.Assembly, n.Type, n.Signature)).Should().BeEmpty();
    }

    [Fact]
    public void Every_resource_that_is_left_out_is_one_of_its_library() => Resources(XDocument.Load(Path.Combine(Root(), "src", "RackSide", "LeftOut.xml")))
        .Should().NotBeEmpty().And.OnlyContain(r => Assembly.Load(r.Assembly).GetManifestResourceNames().Contains(r.Name));

    [Theory]
    [InlineData("Terminal.Gui", "Terminal.Gui.ModuleInitializers", "System.Void InitializeConfiguration()", true)]
    [InlineData("Terminal.Gui", "Terminal.Gui.ModuleInitializers", "System.Void InitializeConfiguration(System.String)", false)]
    [InlineData("Terminal.Gui", "Terminal.Gui.ModuleInitializers", "System.Void InitializeSettings()", false)]
    [InlineData("Terminal.Gui", "Terminal.Gui.ModuleInitializer", "System.Void InitializeConfiguration()", false)]
    [InlineData("LiteDB", "LiteDB.Engine.LiteEngine", "System.Void Recovery(LiteDB.Collation)", true)]
    [InlineData("LiteDB", "LiteDB.Engine.LiteEngine", "Recovery", true)]
    [InlineData("LiteDB", "LiteDB.Engine.LiteEngine", "Rebuild", false)]
    public void A_member_is_known_by_its_whole_signature_or_by_a_name_that_no_other_has(string assembly, string type, string signature, bool known) =>
        Knows(assembly, type, signature).Should().Be(known);

    [Fact]
    public void What_the_program_asks_of_regular_expressions_is_not_among_what_is_left_out() =>
        SourcesThat(NonBacktracking()).Should().BeEmpty("the engine for that is left out of the native program");

    [Fact]
    public void No_enum_is_written_to_json_by_its_name() =>
        SourcesThat(EnumNames()).Should().BeEmpty("the writer of such names is left out of the native program");

    private static IEnumerable<(string Assembly, string Type, string Signature)> Named(XDocument leftOut) =>
        from assembly in leftOut.Root!.Elements("assembly")
        from type in assembly.Elements("type")
        from method in type.Elements("method")
        select (Name(assembly, "fullname"), Name(type, "fullname"), Name(method, "signature") is { Length: > 0 } whole ? whole : Name(method, "name"));

    private static IEnumerable<(string Assembly, string Name)> Resources(XDocument leftOut) =>
        leftOut.Descendants("resource").Select(r => (Name(r.Parent!, "fullname"), Name(r, "name")));

    private static string Name(XElement element, string attribute) => (string?)element.Attribute(attribute) ?? "";

    private static bool Knows(string assembly, string type, string signature) =>
        Assembly.Load(assembly).GetType(type) is { } found
        && found.GetMembers(Any).OfType<MethodBase>().Count(m => m.Name == signature || Signature(m) == signature) == 1;

    private static string Signature(MethodBase method) =>
        $"{(method is MethodInfo plain ? plain.ReturnType : typeof(void))} {method.Name}({string.Join(",", method.GetParameters().Select(p => p.ParameterType.ToString()))})";

    private static IEnumerable<string> SourcesThat(Regex say) =>
        Directory.EnumerateFiles(Path.Combine(Root(), "src"), "*.cs", SearchOption.AllDirectories).Where(f => say.IsMatch(File.ReadAllText(f)));

    [GeneratedRegex(@"RegexOptions\.NonBacktracking")]
    private static partial Regex NonBacktracking();

    [GeneratedRegex(@"JsonStringEnumConverter|UseStringEnumConverter")]
    private static partial Regex EnumNames();

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "RackSide.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException($"no RackSide.sln above {AppContext.BaseDirectory}");
        }

        return folder.FullName;
    }
}
