namespace RackSide.Training.Body;

/// <summary>
/// A forecast, and told as one: the linear model of a body that spends more as it grows heavier,
/// rho dW/dt = dE - eps (W - W0), so W(t) - W0 = (dE / eps)(1 - e^(-eps t / rho)). Hall and Chow 2011, Am J Clin Nutr
/// 94:66-74; Hall et al. 2011, Lancet 378:826-837; the two numbers second-hand. It was held against losing weight, less against
/// gaining on purpose.
/// </summary>
public static class WeightForecast
{
    /// <summary>Rho: energy of a kilogram of change, kcal.</summary>
    public const double PerKilogram = 9100;

    /// <summary>Eps: what a kilogram more spends in a day, kcal.</summary>
    public const double PerKilogramDay = 22;

    /// <summary>The change of weight, kg, after days of so much over the need.</summary>
    /// <param name="surplus">Over the need of the beginning, kcal a day; below zero for under it.</param>
    /// <param name="days">Days since.</param>
    public static double Change(double surplus, double days) =>
        surplus / PerKilogramDay * (1 - Math.Exp(-PerKilogramDay * days / PerKilogram));
}
