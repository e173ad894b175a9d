using RackSide.Files;
using RackSide.Places;
using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Kiosk;

/// <summary>The plan files that lifters of this gym may choose from: those in the folder <c>plans</c> beside gym.yaml.</summary>
internal static class PlansHere
{
    /// <summary>How the name of a plan file ends.</summary>
    public const string Ending = ".yaml";

    /// <summary>Their names without the ending, in order.</summary>
    public static IReadOnlyList<string> Names(Folders folders) => Directory.Exists(Folder(folders))
        ? [.. Directory.EnumerateFiles(Folder(folders), "*" + Ending).Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)]
        : [];

    /// <summary>Reads one.</summary>
    public static Reading<Plan> Read(Folders folders, string name, Catalogue catalogue) =>
        PlanFile.ReadFrom(PathOf(folders, name), catalogue);

    /// <summary>The file of one.</summary>
    public static string PathOf(Folders folders, string name) => Path.Combine(Folder(folders), Path.GetFileName(name) + Ending);

    /// <summary>The one after another, with null, the gym's own, between the last and the first.</summary>
    public static string? After(Folders folders, string? name)
    {
        var names = Names(folders);
        return name is null ? names.FirstOrDefault() : names.FirstOrDefault(n => string.CompareOrdinal(n, name) > 0);
    }

    /// <summary>Where they lie.</summary>
    public static string Folder(Folders folders) => Path.Combine(folders.Config, "plans");
}
