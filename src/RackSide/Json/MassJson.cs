using RackSide.Training.Measures;

namespace RackSide.Json;

/// <summary>A mass as it was loaded, and in kilograms for a reader that adds.</summary>
/// <param name="Amount">The number in its unit.</param>
/// <param name="Unit"><c>kg</c> or <c>lb</c>.</param>
/// <param name="Kilograms">The same mass in kilograms, exact.</param>
internal sealed record MassJson(decimal Amount, string Unit, decimal Kilograms)
{
    private const decimal One = 1.0000000000000000000000000000m;

    /// <summary>That mass.</summary>
    public static MassJson Of(Mass mass) => new(Plain(mass.Amount), mass.Symbol, Plain(mass.Kilograms));

    /// <summary>That mass, or null.</summary>
    public static MassJson? Of(Mass? mass) => mass is { } known ? Of(known) : null;

    // Dividing by a one of the most decimals drops the trailing zeros that a decimal carries along.
    internal static decimal Plain(decimal number) => number / One;
}
