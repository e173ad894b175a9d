using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Files;

/// <summary>The plans that come inside the program beside the built-in one, for whoever has fewer days or another kit.</summary>
internal static class ShippedPlans
{
    /// <summary>The name of the built-in plan, which every gym begins with.</summary>
    public const string BuiltIn = "built-in";

    /// <summary>The names of the others, in order.</summary>
    public static IReadOnlyList<string> Names { get; } = ["dumbbells", "small-kit-pounds", "two-days"];

    /// <summary>The text of one of them, comments and all.</summary>
    public static string Text(string name) => EmbeddedText.Of(FileName(name));

    /// <summary>One of them.</summary>
    /// <exception cref="InvalidDataException">The embedded file is faulty, which is a bug.</exception>
    public static Plan Read(string name, Catalogue catalogue) => PlanFile.Read(Text(name), FileName(name), catalogue).OrThrow();

    private static string FileName(string name) => $"plans/{name}.yaml";
}
