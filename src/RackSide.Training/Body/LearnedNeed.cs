using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Body;

/// <summary>
/// The need of a day learned from the lifter's own numbers: what was eaten, less what went on as weight. It knows this body
/// and this life, which no formula does; but it believes the food as it was told, and most people tell too little.
/// </summary>
/// <param name="Kilocalories">The need, kcal a day.</param>
/// <param name="Error">Its standard error, kcal a day.</param>
/// <param name="Days">Days of the window with food told.</param>
public sealed record LearnedNeed(double Kilocalories, double Error, int Days)
{
    /// <summary>
    /// What a kilogram of body is worth, kcal: 3500 kcal a pound (Wishnofsky 1958, Am J Clin Nutr 6:542-546) is 7716, 32.2 MJ/kg
    /// is 7696. It overstates what leaner people gain or lose (Hall 2008, Int J Obes 32:573-576).
    /// </summary>
    public const double PerKilogram = 7700;

    /// <summary>The share of days that must have food told. Ours.</summary>
    public const double LeastShare = 0.8;

    /// <summary>Above this error it is not used instead of the formula, kcal a day. Ours: no better than the formulas' own spread.</summary>
    public const double MostError = 200;

    private const double Week = 7;

    /// <summary>What the window has taught; null while the data do not allow it.</summary>
    /// <param name="trend">The trend of the window.</param>
    /// <param name="days">What was told of each day.</param>
    /// <param name="today">The last day of the window.</param>
    public static LearnedNeed? Of(WeightTrend trend, IReadOnlyList<DayTold> days, LocalDate today)
    {
        var from = today.PlusDays(-trend.Window);
        var eaten = days.Where(d => d.On > from && d.On <= today).Select(d => (double?)d.Kilocalories).OfType<double>().ToList();
        return trend.Enough && eaten.Count >= WeightTrend.LeastDays && eaten.Count >= LeastShare * trend.Days
            ? new(
                eaten.Average() - (PerKilogram * trend.PerWeek / Week),
                Math.Sqrt(Square(PerKilogram * trend.Error / Week) + MeanError(eaten, trend.Days)),
                eaten.Count)
            : null;
    }

    // The square of the standard error of the mean, of the days that were not told.
    private static double MeanError(List<double> eaten, int days)
    {
        var mean = eaten.Average();
        var variance = eaten.Sum(e => Square(e - mean)) / (eaten.Count - 1);
        return variance / eaten.Count * Math.Max(0, 1 - (eaten.Count / (double)Math.Max(1, days)));
    }

    private static double Square(double value) => value * value;
}
