using System.Text.Json;
using System.Xml.Linq;

namespace RackSide.House;

/// <summary>The libraries inside the program, with their licences, as their own packages tell them.</summary>
internal static class Licences
{
    /// <summary>Packages that only the compiler uses; nothing of them is in the program.</summary>
    private static readonly string[] BuildOnly = ["Microsoft.CodeAnalysis.BannedApiAnalyzers", "Microsoft.NET.ILLink.Tasks"];

    /// <summary>The page docs/licences.md.</summary>
    public static string Markdown() => $"""
        # Licences of what is inside

        RackSide itself is under the [MIT licence](../LICENSE). The program is one file that holds the libraries below, named by its
        lock file, and the .NET runtime (MIT). Each line is what the library's own package says of itself. Where one leaves
        the choice, RackSide takes Apache-2.0. What only tests use (see [decision 3](decisions/3-libraries.md)) is not in the program.
        [Packages for boards](kiosk.md) carry the full texts, and whose copyright each is. `rackside-gym`, which only a rack of a
        [gym](gym.md) has, holds Npgsql (PostgreSQL licence) and two of the Microsoft.Extensions (MIT).

        | library | version | licence |
        |---|---|---|
        {string.Join('\n', Packages().Select(Row))}

        In `rackside-gym`, the program beside it that only racks of a [gym](gym.md) have:

        | library | version | licence |
        |---|---|---|
        {string.Join('\n', Packages("src/RackSide.Server").Select(Row))}

        This page is made: `RACKSIDE_ACCEPT=1 dotnet test tests/RackSide.House` writes it anew.

        """.ReplaceLineEndings("\n");

    /// <summary>The licences that <paramref name="packages"/> come under, each once.</summary>
    public static IEnumerable<string> Names(IEnumerable<Package> packages) => packages.Select(package => package.Licence).Distinct().Order(StringComparer.Ordinal);

    /// <summary>What a program's lock file names, by name.</summary>
    public static IReadOnlyList<Package> Packages(string project = "src/RackSide") =>
    [
        .. from package in Locked($"{project}/packages.lock.json")
           where !BuildOnly.Contains(package.Name)
           orderby package.Name.ToUpperInvariant()
           select Described(project, package.Name, package.Version),
    ];

    private static string Row(Package package) => $"| {package.Name} | {package.Version} | {package.Licence} |";

    private static IEnumerable<(string Name, string Version)> Locked(string file)
    {
        using var document = JsonDocument.Parse(Repository.Read(file));
        return
        [
            .. document.RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(framework => framework.Value.EnumerateObject())
                .Where(entry => entry.Value.TryGetProperty("resolved", out _))
                .Select(entry => (entry.Name, entry.Value.GetProperty("resolved").GetString()!)).Distinct(),
        ];
    }

    private static Package Described(string project, string name, string version)
    {
        var folder = Path.Combine(Cache(project), name.ToLowerInvariant(), version.ToLowerInvariant());
        var described = XDocument.Load(Directory.EnumerateFiles(folder, "*.nuspec").Single());
        string? Told(string element) => described.Descendants().FirstOrDefault(e => e.Name.LocalName == element)?.Value.ReplaceLineEndings(" ").Trim();
        return new Package(Told("id")!, version, Told("license")!);
    }

    private static string Cache(string project)
    {
        using var assets = JsonDocument.Parse(Repository.Read($"{project}/obj/project.assets.json"));
        return assets.RootElement.GetProperty("packageFolders").EnumerateObject().First().Name;
    }

    /// <param name="Name">The package.</param>
    /// <param name="Version">The one in use.</param>
    /// <param name="Licence">Its SPDX expression.</param>
    internal sealed record Package(string Name, string Version, string Licence);
}
