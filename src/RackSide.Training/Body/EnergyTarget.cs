namespace RackSide.Training.Body;

/// <summary>What to eat to grow, kcal a day: a little over the need, and never below the need at rest.</summary>
/// <param name="Least">The lower end.</param>
/// <param name="Most">The upper end.</param>
/// <param name="FewestMeals">How many meals that makes, at the fewest.</param>
/// <param name="MostMeals">And at the most.</param>
public sealed record EnergyTarget(int Least, int Most, int FewestMeals, int MostMeals)
{
    /// <summary>
    /// The least over the need. 250 to 500 kcal is common practice; Slater et al. 2019, Front Nutr 6:131, have 359 to 478
    /// (1500 to 2000 kJ), Iraki et al. 2019, Sports 7(7):154, 10 to 20 per cent.
    /// </summary>
    public const int LeastOver = 250;

    /// <summary>The most over the need.</summary>
    public const int MostOver = 500;

    /// <summary>A meal's least, kcal; a guide. Common practice, no source.</summary>
    public const int SmallMeal = 600;

    /// <summary>A meal's most, kcal; a guide.</summary>
    public const int LargeMeal = 700;

    // Nobody counts to the kilocalorie.
    private const int Step = 10;

    /// <summary>The target over a need.</summary>
    /// <param name="need">The need of a day, kcal, by formula or learned.</param>
    /// <param name="resting">The need at rest: no target is lower.</param>
    public static EnergyTarget Over(decimal need, decimal resting)
    {
        var floor = (int)(Math.Ceiling(resting / Step) * Step);
        var (least, most) = (Math.Max(floor, Rounded(need + LeastOver)), Math.Max(floor, Rounded(need + MostOver)));
        var (few, many) = ((least + LargeMeal - 1) / LargeMeal, most / SmallMeal);
        return new(least, most, Math.Min(few, many), Math.Max(few, many));
    }

    private static int Rounded(decimal kilocalories) => (int)(Math.Round(kilocalories / Step, MidpointRounding.AwayFromZero) * Step);
}
