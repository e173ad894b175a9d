using System.Globalization;

namespace RackSide.Training.Measures;

/// <summary>
/// A mass as it was loaded: an exact decimal in the unit of the plates. Two masses in different units can be compared,
/// but not added, because a sum in a unit nobody loaded would be a number nobody can check at the bar.
/// </summary>
/// <param name="Amount">The number, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit the number was loaded in.</param>
public readonly record struct Mass(decimal Amount, MassUnit Unit) : IComparable<Mass>
{
    /// <summary>Kilograms in one pound. Source: the 1959 international yard and pound agreement; NIST SP 811, appendix B.</summary>
    public const decimal KilogramsPerPound = 0.45359237m;

    /// <summary>A mass of that many kilograms.</summary>
    public static Mass Kg(decimal amount) => new(amount, MassUnit.Kilogram);

    /// <summary>A mass of that many pounds.</summary>
    public static Mass Lb(decimal amount) => new(amount, MassUnit.Pound);

    /// <summary>Nothing, in that unit.</summary>
    public static Mass Zero(MassUnit unit) => new(0, unit);

    /// <summary>The same mass in kilograms, exact.</summary>
    public decimal Kilograms => Unit == MassUnit.Kilogram ? Amount : Amount * KilogramsPerPound;

    /// <summary>The same mass in another unit; for showing only, never for storing.</summary>
    public decimal In(MassUnit unit) => unit == Unit ? Amount
        : unit == MassUnit.Kilogram ? Kilograms
        : Kilograms / KilogramsPerPound;

    /// <summary>The unit's symbol: <c>kg</c> or <c>lb</c>.</summary>
    public string Symbol => Unit.Symbol();

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Unit == other.Unit
        ? Amount.CompareTo(other.Amount)
        : Kilograms.CompareTo(other.Kilograms);

    /// <summary>The sum of two masses of one unit.</summary>
    /// <exception cref="InvalidOperationException">The units differ.</exception>
    public static Mass operator +(Mass a, Mass b) => new(a.Amount + b.In(a, "add"), a.Unit);

    /// <summary>The difference of two masses of one unit.</summary>
    /// <exception cref="InvalidOperationException">The units differ.</exception>
    public static Mass operator -(Mass a, Mass b) => new(a.Amount - b.In(a, "subtract"), a.Unit);

    /// <summary>A multiple of a mass.</summary>
    public static Mass operator *(Mass a, decimal times) => new(a.Amount * times, a.Unit);

    /// <summary>Whether one mass is lighter.</summary>
    public static bool operator <(Mass a, Mass b) => a.CompareTo(b) < 0;

    /// <summary>Whether one mass is heavier.</summary>
    public static bool operator >(Mass a, Mass b) => a.CompareTo(b) > 0;

    /// <summary>Whether one mass is lighter or equal.</summary>
    public static bool operator <=(Mass a, Mass b) => a.CompareTo(b) <= 0;

    /// <summary>Whether one mass is heavier or equal.</summary>
    public static bool operator >=(Mass a, Mass b) => a.CompareTo(b) >= 0;

    /// <summary>The number alone, at most three decimals, no trailing zeros: <c>67.5</c>.</summary>
    public string Number => Amount.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>Number and unit: <c>67.5 kg</c>.</summary>
    public override string ToString() => $"{Number} {Symbol}";

    private decimal In(Mass other, string verb) => Unit == other.Unit
        ? Amount
        : throw new InvalidOperationException($"cannot {verb} {this} and {other}: the units differ");
}
