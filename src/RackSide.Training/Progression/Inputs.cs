using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Progression;

/// <summary>The numbers a decision rests on, alike for every rule, followed by the rule's own.</summary>
internal static class Inputs
{
    public static IReadOnlyList<ReasonInput> Of(Footing f, Decision decision) =>
    [
        .. Of("from", f.Load),
        .. Of("to", decision.Load),
        new("gapDays", f.Gaps.Now, "d"),
        new("asked", f.Asked, Unit(f)),
        new("fewest", f.Fewest, Unit(f)),
        .. f.Misses > 0 ? [new ReasonInput("misses", f.Misses)] : Array.Empty<ReasonInput>(),
        .. decision.Why.Inputs,
    ];

    private static IEnumerable<ReasonInput> Of(string name, Mass? load) =>
        load is { } mass ? [new ReasonInput(name, Math.Round(mass.Amount, 3), mass.Symbol)] : [];

    private static string Unit(Footing f) => f.Exercise.Held ? "s" : "";
}
