using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.Pages.Rack;

/// <summary>A prescription in two lines: what, and why.</summary>
internal static class PlanLines
{
    public static IEnumerable<string> Of(Catalogue catalogue, Prescription asked, int width)
    {
        yield return Frame.Fit(What(catalogue, asked), width);
        yield return Frame.Fit($"   {asked.Why.Line}", width);
    }

    /// <summary>Exercise, sets and load in one line: <c>Barbell back squat   5x5   67.5 kg</c>.</summary>
    public static string What(Catalogue catalogue, Prescription asked, int name = 30) =>
        $"{Frame.Fit(catalogue[asked.Exercise].Name, name).PadRight(name)} {Sets(asked),-10} {(asked.Load is { Amount: > 0 } load ? load.ToString() : "")}".TrimEnd();

    private static string Sets(Prescription asked) => asked.Scheme switch
    {
        Scheme.Range => $"{asked.Targets.Count}x{(asked.Targets.Distinct().Count() == 1 ? asked.Targets[0] : string.Join(' ', asked.Targets))}",
        Scheme.Hold => $"{asked.Targets.Count} x {asked.Targets[0]} s",
        _ => asked.Scheme.Text,
    };
}
