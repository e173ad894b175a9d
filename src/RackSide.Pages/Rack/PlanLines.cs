using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.Pages.Rack;

/// <summary>A prescription in two lines: what, and why.</summary>
public static class PlanLines
{
    /// <summary>What, why and what is offered beside it; what alone where more lines a slot would not fit.</summary>
    internal static IEnumerable<string> Of(Catalogue catalogue, Prescription asked, PageSize size) => size.Rows < 20
        ? [What(catalogue, asked, size)]
        : [What(catalogue, asked, size), $"  {asked.Why.Line}", .. Advice(asked) is { } advice ? [$"  {advice}"] : Array.Empty<string>()];

    /// <summary>What is offered beside the load, led by its word; null where nothing is.</summary>
    internal static string? Advice(Prescription asked) => asked.Why.Advice is { } advice ? $"advice: {advice}" : null;

    /// <summary>Exercise, sets and load in one line: <c>Barbell back squat   5x5   67.5 kg</c>.</summary>
    /// <param name="catalogue">Names the exercise.</param>
    /// <param name="asked">The prescription.</param>
    /// <param name="size">The page it is for; a compact one takes the short name.</param>
    public static string What(Catalogue catalogue, Prescription asked, PageSize size)
    {
        var exercise = catalogue[asked.Exercise];
        var name = size.Compact ? exercise.ShortName.PadRight(16) : exercise.Name.PadRight(36);
        return $"{name} {Sets(asked),-10} {(asked.Load is { Amount: > 0 } load ? load.ToString() : "")}".TrimEnd();
    }

    /// <summary>Sets and reps as asked for today: <c>5x5</c>, <c>3x8</c>, <c>3 x 30 s</c>.</summary>
    public static string Sets(Prescription asked) => asked.Scheme switch
    {
        Scheme.Fixed or Scheme.Range =>
            asked.Targets.Distinct().Count() == 1 ? $"{asked.Targets.Count}x{asked.Targets[0]}" : string.Join(' ', asked.Targets),
        Scheme.Total => $"{asked.Targets[0]} in all",
        Scheme.Accumulate => $"{asked.Targets[0]} s in all",
        Scheme.Hold => $"{asked.Targets.Count} x {asked.Targets[0]} s",
        _ => asked.Scheme.Text,
    };
}
