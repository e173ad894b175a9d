using System.Reflection;
using System.Xml.Linq;

namespace RackSide.House;

/// <summary>Which assembly may use which; the framework always. The table in DEVELOPERS.md says the same.</summary>
internal static class Arrows
{
    private const string Training = "RackSide.Training";
    private const string Logbook = "RackSide.Logbook";
    private const string Pages = "RackSide.Pages";
    private const string Screens = "RackSide.Screens";

    /// <summary>By assembly name. A library that a new export needs is added to the program's line, and nowhere else.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Allowed { get; } = new Dictionary<string, IReadOnlyList<string>>
    {
        [Training] = ["NodaTime"],
        [Logbook] = [Training, "LiteDB", "NodaTime", "System.IO.Hashing"],
        [Pages] = [Training, "NodaTime"],
        [Screens] = [Pages, Training, "Terminal.Gui", "NodaTime"],
        // Nothing of ours: it carries lines that it does not read, so that a rack alone needs nothing of it.
        ["rackside-gym"] = ["Npgsql"],
        ["rackside"] = [Training, Logbook, Pages, Screens, "CsvHelper", "NodaTime", "System.CommandLine", "YamlDotNet"],
    };

    /// <summary>The project that makes an assembly: two are called as what is typed.</summary>
    public static string ProjectOf(string assembly) => assembly switch
    {
        "rackside" => "RackSide",
        "rackside-gym" => "RackSide.Server",
        _ => assembly,
    };

    /// <summary>The uses that no line of the table allows.</summary>
    public static IReadOnlyList<string> Violations(string assembly, IEnumerable<string> uses) =>
        [.. uses.Where(used => !IsFramework(used) && !Allowed[assembly].Contains(used))
            .Select(used => $"{assembly} may not use {used}")];

    /// <summary>What a built assembly really uses.</summary>
    public static IEnumerable<string> UsesOf(string assembly) =>
        Assembly.Load(assembly).GetReferencedAssemblies().Select(name => name.Name!);

    /// <summary>What a project file asks for, used or not; without what it asks to leave out and what only the build needs.</summary>
    public static IEnumerable<string> Declared(XDocument project) =>
        from item in project.Descendants()
        where item.Name.LocalName is "PackageReference" or "ProjectReference" or "Reference"
        where (string?)item.Attribute("ExcludeAssets") != "all" && (string?)item.Attribute("PrivateAssets") != "all"
        select Path.GetFileName(((string?)item.Attribute("Include") ?? "").Replace('\\', '/')).Replace(".csproj", "");

    private static bool IsFramework(string assembly) =>
        File.Exists(Path.Combine(Path.GetDirectoryName(typeof(object).Assembly.Location)!, assembly + ".dll"));
}
