using RackSide.Training.Measures;

namespace RackSide.Training.Body;

/// <summary>Typing a body weight: what is plausible, and what is said where it is not.</summary>
public static class BodyWeightEntry
{
    /// <summary>The least that is taken for a body weight, kg. Common practice, no source: it catches a slip of a key.</summary>
    public const decimal Least = 20;

    /// <summary>The most that is taken for a body weight, kg.</summary>
    public const decimal Most = 350;

    private const int MostCharacters = 6;

    /// <summary>What is typed, with one more character where it can still become a number; else as it was.</summary>
    /// <param name="typed">What is typed so far.</param>
    /// <param name="more">A digit or the decimal mark.</param>
    public static string Add(string typed, char more) =>
        typed.Length >= MostCharacters || (more == '.' && typed.Contains('.', StringComparison.Ordinal)) ? typed
        : typed.Length == 0 && more == '.' ? "0."
        : typed + more;

    /// <summary>The body weight typed, or null where it is no number or not plausible.</summary>
    public static Mass? Read(string typed, MassUnit unit) =>
        NumberEntry.Parse(typed) is { } number && new Mass(number, unit) is var mass && mass >= Mass.Kg(Least) && mass <= Mass.Kg(Most)
            ? mass
            : null;

    /// <summary>What is said where it cannot be read, with the bounds in the lifter's unit.</summary>
    public static string Refusal(MassUnit unit) =>
        $"Type a body weight, {Math.Ceiling(Mass.Kg(Least).In(unit))} to {Math.Floor(Mass.Kg(Most).In(unit))} {unit.Symbol()}.";
}
