using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Body;

/// <summary>Where a body weight goes: the smoothed level for the eye, and the rate with its error for the verdict.</summary>
/// <param name="Level">The smoothed level after the last weigh-in, kg.</param>
/// <param name="PerWeek">The rate, kg a week: the Theil-Sen slope of the window.</param>
/// <param name="Error">Its standard error, kg a week.</param>
/// <param name="WeighIns">Weigh-ins in the window.</param>
/// <param name="Days">From the first day of the window that has one to its last, both counted.</param>
public sealed record WeightTrend(double Level, double PerWeek, double Error, int WeighIns, int Days)
{
    /// <summary>
    /// How far back the rate looks first, days. Four weeks: whole weeks, because weight swings within one (Turicchi et al. 2020,
    /// PLoS One 15(4):e0232152; Orsama et al. 2014, Obes Facts 7:36-47), long enough for a quarter of a kilogram a week to show,
    /// and short enough that what was changed at the table shows too.
    /// </summary>
    public const int FourWeeks = 28;

    /// <summary>How far it looks where four weeks do not settle it, days. docs/body.md has how often either errs.</summary>
    public const int SixWeeks = 42;

    /// <summary>Under so many days nothing is said: a rate of one week is mostly noise (standard error 0.5 kg a week and more).</summary>
    public const int LeastDays = 14;

    /// <summary>Under so many weigh-ins nothing is said. Ours.</summary>
    public const int LeastWeighIns = 6;

    private const int Week = 7;

    private const double MostAlike = 0.6;

    /// <summary>How far back it looked, days.</summary>
    public int Window { get; init; } = FourWeeks;

    /// <summary>Whether there is enough to say anything.</summary>
    public bool Enough => Days >= LeastDays && WeighIns >= LeastWeighIns;

    /// <summary>Whether the rate is known from none: at least two standard errors from zero.</summary>
    public bool Clear => Enough && Math.Abs(PerWeek) >= 2 * Error;

    /// <summary>The trend up to a date; null where nobody was weighed in the window.</summary>
    /// <param name="weighIns">The weigh-ins, oldest first.</param>
    /// <param name="today">The last day of the window.</param>
    /// <param name="window">Its length, days.</param>
    public static WeightTrend? Of(IReadOnlyList<WeighIn> weighIns, LocalDate today, int window = FourWeeks)
    {
        var readings = weighIns.Where(w => w.Date <= today).Select(w => Reading(w, today)).ToList();
        var recent = readings.Where(r => r.Day > -window).ToList();
        if (recent.Count == 0)
        {
            return null;
        }

        var level = SmoothedLevel.Of(WithoutSlips(readings))[^1].Value;
        var days = recent[^1].Day - recent[0].Day + 1;
        return TheilSen.Of(recent) is { } line
            ? new(level, Week * line.Slope, Week * line.Error * Stretch(recent, line), recent.Count, days) { Window = window }
            : new(level, 0, double.PositiveInfinity, recent.Count, days) { Window = window };
    }

    private static DayReading Reading(WeighIn weighIn, LocalDate today) =>
        new(-Period.DaysBetween(weighIn.Date, today), (double)weighIn.Weight.Kilograms);

    // A slip of the keys would pull the level for weeks; the median of its neighbours does not know it.
    private static IEnumerable<DayReading> WithoutSlips(List<DayReading> readings)
    {
        for (var i = 0; i < readings.Count; i++)
        {
            var near = readings.Skip(Math.Max(0, i - 3)).Take(7).Select(r => r.Value).Order().ToList();
            var median = near[near.Count / 2];
            if (near.Count < 4 || Math.Abs(readings[i].Value - median) <= EntryDoubt.Share * median)
            {
                yield return readings[i];
            }
        }
    }

    /// <summary>
    /// One morning is like the last, so readings hold less than as many independent ones would; the error grows by the root of
    /// (1 + r) / (1 - r) with r the correlation of one residual with the next (Bayley and Hammersley 1946, from memory).
    /// </summary>
    private static double Stretch(List<DayReading> readings, TheilSen line)
    {
        var left = readings.Select(r => r.Value - line.Intercept - (line.Slope * r.Day)).ToList();
        var bound = 3 * 1.4826 * left.Select(Math.Abs).Order().ElementAt(left.Count / 2);
        left = [.. left.Select(l => Math.Clamp(l, -bound, bound))];
        var all = left.Sum(l => l * l);
        var next = left.Zip(left.Skip(1), (a, b) => a * b).Sum();
        var correlation = all > 0 ? Math.Clamp(next / all, 0, MostAlike) : 0;
        return Math.Sqrt((1 + correlation) / (1 - correlation));
    }
}
