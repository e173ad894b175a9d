namespace RackSide.Training.Measures;

/// <summary>Reading and writing the two mass units.</summary>
public static class MassUnits
{
    /// <summary>The symbol shown beside a number: <c>kg</c> or <c>lb</c>.</summary>
    public static string Symbol(this MassUnit unit) => unit == MassUnit.Kilogram ? "kg" : "lb";

    /// <summary>The unit a symbol stands for, or null where it stands for none.</summary>
    public static MassUnit? Parse(string? symbol) => symbol?.Trim().ToLowerInvariant() switch
    {
        "kg" => MassUnit.Kilogram,
        "lb" => MassUnit.Pound,
        _ => null,
    };
}
