using NodaTime;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Body;

/// <summary>
/// An invented lifter of 80 kg with a known need who eats a known amount over it, and weighs in on most mornings. The scatter of
/// a morning is 0.47 kg with four tenths of it like the morning before, which makes day-to-day differences of 0.51 kg (Cheuvront
/// et al. 2004, from memory: 0.51; Edholm et al. 1974, second-hand: 0.50 to 0.54), and the week swings by 0.35 % from its top
/// to its bottom (Turicchi et al. 2020, seen). One reading in a hundred is a slip of ten kilograms.
/// </summary>
internal sealed class SimulatedEater(int seed)
{
    /// <summary>The weight on the first day.</summary>
    public const double Kilograms = 80;

    /// <summary>The need, kcal a day.</summary>
    public const double Need = 2500;

    private const double Scatter = 0.47;
    private const double LikeTheLast = 0.4;
    private const double Swing = 0.0035 * Kilograms / 2;
    private const double Weighed = 0.9;
    private const double Slip = 0.01;

    private static readonly LocalDate Last = new(2026, 11, 26);

    private readonly Random chance = new(seed);

    /// <summary>So many days at a rate of so many kilograms a week, up to the last day.</summary>
    public (IReadOnlyList<WeighIn> WeighIns, IReadOnlyList<DayTold> Days) Live(int days, double perWeek)
    {
        List<WeighIn> weighIns = [];
        List<DayTold> told = [];
        var (residual, phase) = (Scatter * Normal(), chance.Next(7));
        for (var day = 0; day < days; day++)
        {
            var date = Last.PlusDays(day + 1 - days);
            residual = (LikeTheLast * residual) + (Scatter * Math.Sqrt(1 - (LikeTheLast * LikeTheLast)) * Normal());
            var mass = Kilograms + (perWeek / 7 * day) + residual + (Swing * Math.Sin(2 * Math.PI * (day + phase) / 7));
            if (chance.NextDouble() < Weighed)
            {
                weighIns.Add(new(date, Mass.Kg(Math.Round((decimal)(chance.NextDouble() < Slip ? mass + 10 : mass), 1))));
            }

            told.Add(new(new FactId("rack", day + 1), Instant.FromUtc(2026, 11, 26, 8, 0), date)
            {
                Kilocalories = (int)Math.Round(Need + (LearnedNeed.PerKilogram * perWeek / 7) + (250 * Normal())),
            });
        }

        return (weighIns, told);
    }

    /// <summary>The trend and the verdict at the end of it, and what was eaten.</summary>
    public (WeightTrend Trend, GainVerdict Verdict, IReadOnlyList<DayTold> Days) Judge(int days, double perWeek)
    {
        var (weighIns, told) = Live(days, perWeek);
        var (trend, verdict) = GainVerdict.Of(weighIns, Last)!.Value;
        return (trend, verdict, told);
    }

    /// <summary>The last day.</summary>
    public static LocalDate Today => Last;

    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
