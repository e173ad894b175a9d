using RackSide.Training.Loading;

namespace RackSide.Json;

/// <summary>A bar.</summary>
internal sealed record BarJson(string Name, MassJson Mass);

/// <summary>What <c>rackside plates --json</c> prints.</summary>
internal sealed record PlatesJson
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>The load asked about.</summary>
    public required MassJson Target { get; init; }

    /// <summary>Whether it can be made.</summary>
    public required bool Loadable { get; init; }

    /// <summary>The sentence.</summary>
    public required string Text { get; init; }

    /// <summary>The bar; null where the load cannot be made.</summary>
    public required BarJson? Bar { get; init; }

    /// <summary>The plates on each side, inside to outside; null where the load cannot be made.</summary>
    public required IReadOnlyList<MassJson>? EachSide { get; init; }

    /// <summary>The next lighter load there is, or null.</summary>
    public required MassJson? Below { get; init; }

    /// <summary>The next heavier load there is, or null.</summary>
    public required MassJson? Above { get; init; }

    /// <summary>That load.</summary>
    public static PlatesJson Of(Loadable loadable) => new()
    {
        Target = MassJson.Of(loadable.Target),
        Loadable = loadable.Stack is not null,
        Text = loadable.Text,
        Bar = loadable.Stack is { } stack ? new BarJson(stack.Bar.Name, MassJson.Of(stack.Bar.Mass)) : null,
        EachSide = loadable.Stack?.Side.Select(MassJson.Of).ToList(),
        Below = MassJson.Of(loadable.Below),
        Above = MassJson.Of(loadable.Above),
    };
}
