using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>
/// A power of ten small enough that a handful of masses are all whole numbers of it, in kilograms and in pounds alike (a
/// pound is an exact decimal number of kilograms), so that they can be added and compared as integers without rounding.
/// </summary>
internal sealed class ExactUnit
{
    /// <summary>Dividing by it strips a decimal of its trailing zeros.</summary>
    private const decimal ManyZeros = 1.000000000000000000000000000m;

    private readonly decimal perKilogram;

    /// <summary>The unit of these masses.</summary>
    public ExactUnit(IEnumerable<Mass> masses)
    {
        var decimals = masses.Select(m => (m.Kilograms / ManyZeros).Scale).Append((byte)0).Max();
        perKilogram = Enumerable.Repeat(10m, decimals).Aggregate(1m, (product, ten) => product * ten);
    }

    /// <summary>A mass in this unit.</summary>
    /// <exception cref="OverflowException">It is over nine trillion units, which no bar weighs.</exception>
    public long Of(Mass mass) => decimal.ToInt64(mass.Kilograms * perKilogram);

    /// <summary>An amount of this unit in kilograms.</summary>
    public decimal Kilograms(long units) => units / perKilogram;
}
