namespace RackSide.Training.Body;

/// <summary>Protein in grams, from body mass.</summary>
/// <param name="LeastADay">The lower end, g a day.</param>
/// <param name="MostADay">The upper end, g a day.</param>
/// <param name="LeastAMeal">The lower end of a meal, g.</param>
/// <param name="MostAMeal">The upper end of a meal, g.</param>
public sealed record ProteinAdvice(int LeastADay, int MostADay, int LeastAMeal, int MostAMeal)
{
    /// <summary>
    /// 1.4 to 2.0 g/kg a day, and 0.25 g/kg or 20 to 40 g a meal: Jäger et al. 2017, J Int Soc Sports Nutr 14:20. More than about
    /// 1.6 g/kg brought no more muscle (Morton et al. 2018, Br J Sports Med 52:376-384, second-hand); Iraki et al. 2019 have
    /// 0.40 to 0.55 g/kg a meal, so where they disagree the meal's range stays at 20 to 40 g.
    /// </summary>
    /// <param name="kilograms">Body mass, kg.</param>
    public static ProteinAdvice Of(decimal kilograms) =>
        new(Grams(1.4m * kilograms), Grams(2.0m * kilograms), Math.Clamp(Grams(0.25m * kilograms), 20, 40), 40);

    private static int Grams(decimal grams) => (int)Math.Round(grams, MidpointRounding.AwayFromZero);
}
