using System.Globalization;
using CsCheck;
using NodaTime;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Body;

/// <summary>The smoothed level, the slope and its error, against the handbook, the paper and R.</summary>
public class TrendTests
{
    private static readonly LocalDate Today = new(2026, 11, 26);

    // A body weight example, worked out by hand; a slip of ten kilograms on day 7.
    private static readonly double[] Fortnight = [80.0, 80.6, 79.8, 80.2, 80.9, 80.1, 80.4, 80.7, 80.3, 80.5, 81.0, 80.4, 80.6, 80.8];

    [Fact] // NIST/SEMATECH e-Handbook 6.4.3.1: the example (data from memory, its last 70 and 71.7 seen), one index earlier.
    public void The_level_is_the_handbooks_example()
    {
        var levels = SmoothedLevel.Of(Series([71, 70, 69, 68, 64, 65, 72, 78, 75, 75, 75, 70]));

        levels.Select(l => Math.Round(l.Value, 2)).Take(11).Should().Equal(71, 70.9, 70.71, 70.44, 69.80, 69.32, 69.58, 70.43, 70.88, 71.29, 71.67);
        levels[^1].Value.Should().BeApproximately(71.50, 0.005);
    }

    [Theory] // R: HoltWinters with beta and gamma off.
    [InlineData(0.10, 2)]
    [InlineData(0.25, 3)]
    [InlineData(0.50, 4)]
    public void The_level_is_what_R_smooths(double weight, int column)
    {
        var table = Rows("ses.csv");
        var levels = SmoothedLevel.Of(table.Select(r => new DayReading((int)r[0], r[1])), weight);

        levels.Select(l => l.Value).Should().HaveCount(84).And.SatisfyRespectively(table.Select(r => (Action<double>)(l => l.Should().BeApproximately(r[column], 1e-9))));
    }

    [Fact] // R: the plain recursion; a definition, no independent check.
    public void Days_without_a_reading_weigh_the_next_one_more() =>
        SmoothedLevel.Of(Rows("ema_gaps.csv").Select(r => new DayReading((int)r[0], r[1]))).Zip(Rows("ema_gaps.csv"))
            .Should().OnlyContain(p => Math.Abs(p.First.Value - p.Second[2]) < 1e-9);

    [Fact]
    public void The_level_of_a_fortnight() => SmoothedLevel.Of(Series(Fortnight))[^1].Value.Should().BeApproximately(80.4030, 0.00005);

    [Fact] // (1 - a) / a = 9 days at 0.1.
    public void The_level_lags_nine_days_behind_a_ramp_so_no_rate_is_taken_from_it() =>
        SmoothedLevel.Of(Series([.. Enumerable.Range(0, 200).Select(d => 80 + (0.05 * d))]))[^1].Value.Should().BeApproximately(80 + (0.05 * 190), 0.001);

    [Fact] // Sen 1968, J Am Stat Assoc 63:1379-1389, his example: slope 4, 93 % interval 26/7 to 35/8; intercept by residuals 6.
    public void The_slope_is_the_papers_example()
    {
        int[] days = [1, 2, 3, 4, 10, 12, 18];
        double[] values = [9, 15, 19, 20, 45, 55, 78];
        var line = TheilSen.Of([.. days.Zip(values, (d, v) => new DayReading(d, v))], z: 1.811910673)!;

        line.Slope.Should().Be(4);
        line.Intercept.Should().Be(6, "the median of what the slope leaves; Conover's median convention would give 4");
        line.Low.Should().BeApproximately(26 / 7.0, 1e-12);
        line.High.Should().BeApproximately(35 / 8.0, 1e-12);
    }

    public static TheoryData<string, int> Windows => new() { { "14", 14 }, { "21", 21 }, { "28", 28 }, { "42", 42 }, { "84", 84 }, { "gaps", 0 } };

    [Theory] // R: medians of pairwise slopes; Sen's interval with ties.
    [MemberData(nameof(Windows))]
    public void The_slope_and_its_interval_are_what_R_finds(string name, int last)
    {
        var readings = Rows(last == 0 ? "ema_gaps.csv" : "ses.csv").Select(r => new DayReading((int)r[0], r[1])).ToList();
        var expected = File.ReadLines(Reference("slopes.csv")).Select(l => l.Split(',')).Single(l => l[0] == name).Select(v => double.TryParse(v, CultureInfo.InvariantCulture, out var n) ? n : 0).ToList();
        var line = TheilSen.Of(last == 0 ? readings : readings.TakeLast(last).ToList())!;

        line.Slope.Should().BeApproximately(expected[10], 1e-9);
        line.Intercept.Should().BeApproximately(expected[11], 1e-9);
        line.Low.Should().BeApproximately(expected[14], 1e-9);
        line.High.Should().BeApproximately(expected[15], 1e-9);
    }

    [Fact] // MASS wtloss: 52 weighings of a real person over 246 days, some of them on one day.
    public void A_real_series_of_52_weighings()
    {
        var readings = Rows("wtloss/wtloss_data.csv").Select(r => new DayReading((int)r[0], r[1])).ToList();

        readings.Should().HaveCount(52);
        TheilSen.Of(readings)!.Slope.Should().BeApproximately(-0.291276595744681, 1e-12);
        SmoothedLevel.Of(readings)[^1].Value.Should().BeApproximately(113.679581032536, 1e-9);
    }

    [Fact]
    public void A_typing_slip_moves_the_slope_of_least_squares_and_not_this_one()
    {
        double[] slipped = [.. Fortnight];
        slipped[6] = 90.4;

        (7 * TheilSen.Of(Series(Fortnight))!.Slope).Should().BeApproximately(0.350, 1e-9);
        (7 * TheilSen.Of(Series(slipped))!.Slope).Should().BeApproximately(0.350, 1e-9);
        (7 * LeastSquares(Fortnight)).Should().BeApproximately(0.31231, 0.00001);
        (7 * LeastSquares(slipped)).Should().BeApproximately(0.158, 0.0005);
    }

    [Fact]
    public void A_slip_or_a_gap_leaves_level_and_rate_where_they_were()
    {
        var whole = Trend(Fortnight)!;
        double[] slipped = [.. Fortnight];
        slipped[6] = 8.04;
        var gappy = WeightTrend.Of([.. WeighIns(Fortnight).Where((_, i) => i is not (3 or 4 or 8))], Today)!;

        Trend(slipped)!.Level.Should().BeApproximately(whole.Level, 0.05);
        Trend(slipped)!.PerWeek.Should().BeApproximately(whole.PerWeek, 0.1);
        gappy.PerWeek.Should().BeApproximately(whole.PerWeek, 0.15);
        (gappy.WeighIns, gappy.Days).Should().Be((11, 14));
    }

    [Fact]
    public void Under_fourteen_days_or_six_weighings_nothing_is_clear_however_steep()
    {
        double[] steep = [.. Enumerable.Range(0, 13).Select(d => 80 + (0.3 * d))];

        Trend(steep)!.Clear.Should().BeFalse();
        Trend([.. steep, 84])!.Clear.Should().BeTrue();
        WeightTrend.Of([.. WeighIns([.. steep, 84]).Where((_, i) => i % 3 == 1)], Today)!.Clear.Should().BeFalse();
    }

    [Fact]
    public void One_weighing_has_a_level_and_no_rate()
    {
        var trend = Trend([81.4])!;

        (trend.Level, trend.Enough, trend.Clear, GainVerdict.Of(trend).Word).Should().Be((81.4, false, false, GainWord.NoClearTrend));
        WeightTrend.Of([], Today).Should().BeNull();
    }

    [Fact]
    public void What_is_older_than_four_weeks_says_nothing_of_the_rate() =>
        Trend([.. Enumerable.Repeat(70.0, 60), .. Enumerable.Range(0, 28).Select(d => 80 + (0.05 * d))])!
            .PerWeek.Should().BeApproximately(0.35, 1e-9);

    [Fact]
    public void The_slope_of_a_line_is_its_slope_whatever_a_quarter_of_the_readings_says() => Gen.Select(
        Gen.Double[-0.3, 0.3], Gen.Int[16, 40], Gen.Int[0, 1000]).Sample((slope, days, seed) =>
        {
            var readings = Enumerable.Range(0, days).Select(d => new DayReading(d, 80 + (slope * d))).ToArray();
            for (var i = 0; i < days / 4; i++)
            {
                var at = (seed + (i * 5)) % days;
                readings[at] = readings[at] with { Value = 80 + ((((seed + i) % 7) - 3) * 10) };
            }

            return Math.Abs(TheilSen.Of(readings)!.Slope - slope) < 0.2;
        });

    private static WeightTrend? Trend(double[] values) => WeightTrend.Of(WeighIns(values), Today);

    private static List<WeighIn> WeighIns(double[] values) =>
        [.. values.Select((v, i) => new WeighIn(Today.PlusDays(i + 1 - values.Length), Mass.Kg((decimal)v)))];

    private static List<DayReading> Series(double[] values) => [.. values.Select((v, i) => new DayReading(i, v))];

    private static double LeastSquares(double[] values)
    {
        var (x, y) = ((values.Length - 1) / 2.0, values.Average());
        return values.Select((v, i) => (i - x) * (v - y)).Sum() / values.Select((_, i) => (i - x) * (i - x)).Sum();
    }

    private static List<double[]> Rows(string file) =>
        [.. File.ReadLines(Reference(file)).Skip(1).Select(l => l.Split(',').Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray())];

    private static string Reference(string file) => Path.Combine(AppContext.BaseDirectory, "Body", "Reference", file);
}
