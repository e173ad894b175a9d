using System.Globalization;
using RackSide.Training.Body;

namespace RackSide.Training.Tests.Body;

/// <summary>How often the verdicts err, on invented lifters whose rate is known.</summary>
public class VerdictErrorTests
{
    private const int Lifters = 400;
    private const double Cap = 0.4;

    // Of 400 lifters a share is good to a few points; the document's are of 2000.
    private const double Points = 7;

    [Theory] // The aim: under two in a hundred at 28 days.
    [InlineData(28, Cap)]
    [InlineData(28, 0.6)]
    [InlineData(42, Cap)]
    public void Eat_more_is_said_to_fewer_than_two_in_a_hundred_who_gain_too_fast(int days, double perWeek) =>
        Share(days, perWeek, GainWord.More).Should().BeLessThan(2);

    [Theory]
    [InlineData(14)]
    [InlineData(28)]
    public void Eat_less_is_said_to_few_who_do_not_gain(int days) => Share(days, 0, GainWord.Less).Should().BeLessThan(5);

    [Fact]
    public void Most_who_gain_far_too_fast_are_told_so_after_four_weeks() => Share(28, 0.9, GainWord.Less).Should().BeGreaterThan(90);

    [Fact]
    public void Most_who_do_not_gain_are_told_to_eat_more_after_six_weeks() => Share(42, 0, GainWord.More).Should().BeGreaterThan(75);

    [Fact]
    public void The_error_that_is_told_is_the_error_there_is()
    {
        var trends = Enumerable.Range(0, Lifters).Select(seed => new SimulatedEater(seed).Judge(28, 0.3).Trend).ToList();
        var scatter = Math.Sqrt(trends.Average(t => Math.Pow(t.PerWeek - 0.3, 2)));

        (trends.Average(t => t.Error) / scatter).Should().BeInRange(0.8, 1.25);
    }

    [Fact] // 95 in a hundred lie within two standard errors, if the error is right.
    public void The_need_that_is_learned_is_the_need_within_its_error()
    {
        var learned = Enumerable.Range(0, Lifters).Select(seed => new SimulatedEater(seed).Judge(28, 0.3))
            .Select(r => LearnedNeed.Of(r.Trend, r.Days, SimulatedEater.Today)).OfType<LearnedNeed>().ToList();

        learned.Average(l => l.Kilocalories).Should().BeApproximately(SimulatedEater.Need, 20);
        Percent(learned.Count(l => Math.Abs(l.Kilocalories - SimulatedEater.Need) < 2 * l.Error)).Should().BeGreaterThan(88);
        learned.Should().HaveCountGreaterThan(Lifters * 9 / 10);
    }

    [Fact]
    public void The_documents_table_is_what_is_measured()
    {
        var rows = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Reference", "body.md"))
            .Select(l => l.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            .Where(c => c.Length == 6 && int.TryParse(c[0], out _))
            .Select(c => c.Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray()).ToList();

        rows.Select(r => r[0]).Distinct().Should().Equal(14, 21, 28, 42);
        foreach (var row in rows.Where(r => r[1] is 0 or Cap or 0.9))
        {
            GainWord[] words = [GainWord.More, GainWord.NoClearTrend, GainWord.Stay, GainWord.Less];
            var verdicts = Verdicts((int)row[0], row[1]);
            words.Select(w => Percent(verdicts.Count(v => v == w))).Zip(row[2..])
                .Should().OnlyContain(p => Math.Abs(p.First - p.Second) < Points, $"{row[0]} days at {row[1]} kg a week");
        }
    }

    private static double Share(int days, double perWeek, GainWord word) => Percent(Verdicts(days, perWeek).Count(w => w == word));

    private static double Percent(int count) => 100.0 * count / Lifters;

    private static List<GainWord> Verdicts(int days, double perWeek) =>
        [.. Enumerable.Range(0, Lifters).Select(seed => new SimulatedEater(seed).Judge(days, perWeek).Verdict.Word)];
}
