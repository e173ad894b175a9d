namespace RackSide.Training.Body;

/// <summary>A reading on a day.</summary>
/// <param name="Day">The day, counted from any one day on.</param>
/// <param name="Value">The reading.</param>
public sealed record DayReading(int Day, double Value);

/// <summary>
/// Simple exponential smoothing for the eye: S = S + a (y - S), the level after a reading (the form of Roberts 1959; the
/// NIST/SEMATECH e-Handbook, 6.4.3.1, has the same numbers one index later). Days without a reading weigh the next one more:
/// a is 1 - (1 - a)^days. It lags behind a steady ramp by (1 - a) / a days, so a rate is never taken from it.
/// </summary>
public static class SmoothedLevel
{
    /// <summary>How much a day's reading counts; 0.1 lags nine days behind a ramp. Ours: quiet enough for the eye.</summary>
    public const double Weight = 0.1;

    /// <summary>The level after each day that has a reading; several readings of a day count as their mean.</summary>
    /// <param name="readings">Readings, oldest first.</param>
    /// <param name="weight">How much a day's reading counts; above 0 and at most 1.</param>
    public static IReadOnlyList<DayReading> Of(IEnumerable<DayReading> readings, double weight = Weight)
    {
        List<DayReading> levels = [];
        foreach (var day in readings.GroupBy(r => r.Day))
        {
            var mean = day.Average(r => r.Value);
            levels.Add(new(day.Key, levels.Count == 0 ? mean : After(levels[^1], day.Key, mean, weight)));
        }

        return levels;
    }

    private static double After(DayReading before, int day, double reading, double weight) =>
        before.Value + ((1 - Math.Pow(1 - weight, day - before.Day)) * (reading - before.Value));
}
