using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Json;

/// <summary>Someone who trains here.</summary>
/// <param name="Name">The name.</param>
/// <param name="Unit">kg or lb.</param>
/// <param name="Pin">Whether a PIN is asked for.</param>
/// <param name="Plan">The plan file chosen; null for the gym's own plan.</param>
internal sealed record LifterJson(string Name, string Unit, bool Pin, string? Plan);

/// <summary>What <c>rackside lifters --json</c> prints.</summary>
internal sealed record LiftersJson
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>In the order they joined.</summary>
    public required IReadOnlyList<LifterJson> Lifters { get; init; }

    /// <summary>These lifters.</summary>
    public static LiftersJson Of(IReadOnlyList<Lifter> lifters) => new()
    {
        Lifters = [.. lifters.Select(l => new LifterJson(l.Name, l.Unit.Symbol(), l.Pin is not null, l.Plan))],
    };
}
