namespace RackSide.Training.Body;

/// <summary>
/// The slope of a line through readings as the median of the slopes between all pairs of them: almost a third of the readings
/// may be slips before it is lost. With Sen's interval about it. Sources: Theil 1950; Sen 1968, J Am Stat Assoc 63:1379-1389;
/// the variance with ties and the ranks as Gilbert 1987 writes them (both from memory, checked against his example and R).
/// </summary>
/// <param name="Slope">A day's change.</param>
/// <param name="Intercept">The value on day 0: the median of what the slope leaves. Conover's other convention is not used.</param>
/// <param name="Low">The lower end of the interval for the slope.</param>
/// <param name="High">Its upper end.</param>
public sealed record TheilSen(double Slope, double Intercept, double Low, double High)
{
    /// <summary>Standard errors on each side of a normal value in a 95 % interval.</summary>
    public const double Z95 = 1.959963984540054;

    /// <summary>The standard error of the slope: what the 95 % interval is wide, over twice 1.96.</summary>
    public double Error => (High - Low) / (2 * Z95);

    /// <summary>The line through readings; null where fewer than two days have any.</summary>
    /// <param name="readings">In any order; pairs of one day have no slope and are left out.</param>
    /// <param name="z">How many standard errors wide the interval is on each side.</param>
    public static TheilSen? Of(IReadOnlyList<DayReading> readings, double z = Z95)
    {
        var slopes = Slopes(readings);
        if (slopes.Count == 0)
        {
            return null;
        }

        var slope = Median(slopes);
        var (low, high) = Ranks(slopes.Count, z * Math.Sqrt(Variance(readings)));
        return new(slope, Median([.. readings.Select(r => r.Value - (slope * r.Day)).Order()]), slopes[low], slopes[high]);
    }

    private static List<double> Slopes(IReadOnlyList<DayReading> readings)
    {
        List<double> slopes = [];
        for (var i = 0; i < readings.Count; i++)
        {
            for (var j = i + 1; j < readings.Count; j++)
            {
                if (readings[i].Day != readings[j].Day)
                {
                    slopes.Add((readings[j].Value - readings[i].Value) / (readings[j].Day - readings[i].Day));
                }
            }
        }

        slopes.Sort();
        return slopes;
    }

    private static (int Low, int High) Ranks(int slopes, double width) =>
        (Math.Max(0, (int)Math.Round((slopes - width) / 2) - 1), Math.Min(slopes - 1, (int)Math.Round((slopes + width) / 2)));

    // Of Kendall's S: readings that are alike, or of one day, say nothing about rising or falling.
    private static double Variance(IReadOnlyList<DayReading> readings)
    {
        var alike = readings.GroupBy(r => r.Value).Concat(readings.GroupBy(r => (double)r.Day)).Sum(same => Pairs(same.Count()));
        return Math.Max(0, Pairs(readings.Count) - alike) / 18;
    }

    private static double Pairs(int count) => count * (count - 1.0) * ((2.0 * count) + 5);

    private static double Median(List<double> sorted) =>
        (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
}
