namespace RackSide.Json;

/// <summary>A plan to choose.</summary>
/// <param name="Name">What it is chosen by.</param>
/// <param name="Title">The name people read; null where the file has mistakes.</param>
/// <param name="DaysAWeek">Training days a week.</param>
internal sealed record PlanJson(string Name, string? Title, int? DaysAWeek);

/// <summary>Who trains by which; null is the built-in plan.</summary>
internal sealed record PlanOfLifterJson(string Lifter, string? Plan);

/// <summary>What <c>rackside plan list --json</c> prints.</summary>
/// <param name="Shipped">Those that come with the program.</param>
/// <param name="Here">Those of the gym.</param>
/// <param name="Lifters">Who trains by which.</param>
internal sealed record PlansJson(IReadOnlyList<PlanJson> Shipped, IReadOnlyList<PlanJson> Here, IReadOnlyList<PlanOfLifterJson> Lifters)
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;
}
