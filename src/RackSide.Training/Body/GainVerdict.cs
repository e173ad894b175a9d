using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Body;

/// <summary>What the rate says about food.</summary>
public enum GainWord
{
    /// <summary>Nothing yet: too few days, or a rate that cannot be told from none and may be right.</summary>
    NoClearTrend,

    /// <summary>Slower than a body can build: eat more.</summary>
    More,

    /// <summary>As it should be, as far as can be told: stay.</summary>
    Stay,

    /// <summary>Faster than the cap: eat less.</summary>
    Less,
}

/// <summary>The verdict on a rate of gain, for somebody who eats to grow.</summary>
/// <param name="Word">What it comes to.</param>
/// <param name="Aim">The slowest rate aimed for, kg a week.</param>
/// <param name="Cap">The fastest, kg a week (see <see cref="GainCap"/>).</param>
/// <param name="MostlyFat">Whether the rate is one at which most of the gain is fat.</param>
public sealed record GainVerdict(GainWord Word, double Aim, double Cap, bool MostlyFat)
{
    /// <summary>The lower end of the rate for novices, of body mass a week: Iraki et al. 2019, Sports 7(7):154.</summary>
    public const double AimShare = 0.0025;

    /// <summary>How much more or less to eat, kcal a day: common practice, within what Slater et al. 2019 advise.</summary>
    public const int LeastChange = 150;

    /// <summary>The most of a change at once, kcal a day.</summary>
    public const int MostChange = 250;

    /// <summary>
    /// From two pounds a week on the gain is mostly fat: a faster gain brought more skinfold and hardly more muscle or strength
    /// in Helms et al. 2023, Sports Med Open 9. The figure of two to three pounds is common practice.
    /// </summary>
    public static readonly double FatPounds = (double)Mass.Lb(2).Kilograms;

    /// <summary>
    /// The verdict. "More" only where the rate is two standard errors below the aim, so that it is not said to somebody who
    /// gains too fast; "less" where the rate is clear and one standard error over the cap, because waiting costs more there.
    /// </summary>
    /// <param name="trend">The trend.</param>
    public static GainVerdict Of(WeightTrend trend)
    {
        var aim = AimShare * trend.Level;
        var cap = (double)GainCap.PerWeek(Mass.Kg((decimal)trend.Level)).Amount;
        return new(WordOf(trend, aim, cap), aim, cap, trend.Clear && trend.PerWeek >= FatPounds);
    }

    /// <summary>
    /// The trend of four weeks and its verdict; where those four do not settle it and six weeks do, those of six.
    /// </summary>
    /// <param name="weighIns">The weigh-ins, oldest first.</param>
    /// <param name="today">The day.</param>
    public static (WeightTrend Trend, GainVerdict Verdict)? Of(IReadOnlyList<WeighIn> weighIns, LocalDate today)
    {
        if (WeightTrend.Of(weighIns, today) is not { } four || Of(four) is not { } verdict)
        {
            return null;
        }

        var six = verdict.Word == GainWord.NoClearTrend ? WeightTrend.Of(weighIns, today, WeightTrend.SixWeeks)! : four;
        return Of(six).Word == GainWord.NoClearTrend ? (four, verdict) : (six, Of(six));
    }

    private static GainWord WordOf(WeightTrend trend, double aim, double cap) =>
        !trend.Enough ? GainWord.NoClearTrend
        : trend.PerWeek + (2 * trend.Error) < aim ? GainWord.More
        : !trend.Clear ? GainWord.NoClearTrend
        : trend.PerWeek - trend.Error > cap ? GainWord.Less
        : GainWord.Stay;
}
