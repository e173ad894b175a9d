namespace RackSide.Training.Body;

/// <summary>
/// What to drink in a day, litres: a range, because the sources are a litre apart and people are not alike. EFSA 2010 (EFSA J
/// 8(3):1459) has 2.5 l of water in all for men and 2.0 for women, four fifths of it drunk; the Institute of Medicine 2004 has
/// 3.7 and 2.7 (from memory). By the reference bodies of 70 and 57 kg (from memory) that is 28 to 40 ml drunk for a kilogram,
/// for both.
/// </summary>
/// <param name="Least">The lower end, litres.</param>
/// <param name="Most">The upper end, litres.</param>
public sealed record WaterAdvice(decimal Least, decimal Most)
{
    /// <summary>The lower end, millilitres drunk for a kilogram: four fifths of EFSA's 2.5 l by 70 kg, and of its 2.0 l by 57 kg.</summary>
    public const int LeastPerKilogram = 28;

    /// <summary>The upper end, millilitres drunk for a kilogram: four fifths of 3.7 l by 70 kg is 42, of 2.7 l by 57 kg is 38.</summary>
    public const int MostPerKilogram = 40;

    /// <summary>Said beside it.</summary>
    public const string Heat = "half a litre to a litre more on a hot day or in long sweat";

    /// <summary>And always.</summary>
    public const string Caution = "Drink to thirst; very large amounts of plain water at once are dangerous.";

    /// <summary>The range for a body.</summary>
    /// <param name="kilograms">Body mass, kg.</param>
    public static WaterAdvice Of(decimal kilograms) => new(Litres(LeastPerKilogram * kilograms), Litres(MostPerKilogram * kilograms));

    private static decimal Litres(decimal millilitres) => Math.Round(millilitres / 1000, 1, MidpointRounding.AwayFromZero);
}
