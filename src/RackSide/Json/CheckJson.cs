using RackSide.Commands;

namespace RackSide.Json;

/// <summary>One thing looked at.</summary>
/// <param name="Name">What.</param>
/// <param name="State"><c>ok</c>, <c>look</c> or <c>broken</c>.</param>
/// <param name="Text">What was found.</param>
/// <param name="Remedy">What to do about it; null where nothing, or where the text says so.</param>
internal sealed record FindingJson(string Name, string State, string Text, string? Remedy);

/// <summary>What <c>rackside check --json</c> prints.</summary>
internal sealed record CheckJson
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>All that was looked at, in the order a person would mend it.</summary>
    public required IReadOnlyList<FindingJson> Findings { get; init; }

    /// <summary>These findings.</summary>
    public static CheckJson Of(IEnumerable<Finding> found) => new() { Findings = [.. found.Select(f => new FindingJson(f.Name, f.State, f.Text, f.Remedy))] };
}
