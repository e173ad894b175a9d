using RackSide.Training.History;

namespace RackSide.Training.Body;

/// <summary>
/// What a body spends at rest, kcal a day, from mass (kg), height (cm), age (years) and sex. Each is a regression over
/// grown-ups; one person may lie ten per cent and more off.
/// </summary>
public static class RestingEnergy
{
    /// <summary>
    /// Mifflin, St Jeor et al. 1990, Am J Clin Nutr 51(2):241-247: 498 people of 19 to 78 years, R² 0.71. The default here.
    /// </summary>
    public static decimal MifflinStJeor(decimal kilograms, decimal centimetres, int years, FormulaSex sex) =>
        (10 * kilograms) + (6.25m * centimetres) - (5 * years) + (sex == FormulaSex.Male ? 5 : -161);

    /// <summary>
    /// Harris and Benedict's formula with the numbers of Roza and Shizgal 1984, Am J Clin Nutr 40(1):168-182; 95 % of men lie
    /// within 213 kcal, of women within 201 (second-hand).
    /// </summary>
    public static decimal RozaShizgal(decimal kilograms, decimal centimetres, int years, FormulaSex sex) => sex == FormulaSex.Male
        ? 88.362m + (13.397m * kilograms) + (4.799m * centimetres) - (5.677m * years)
        : 447.593m + (9.247m * kilograms) + (3.098m * centimetres) - (4.330m * years);
}
