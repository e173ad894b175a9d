using NodaTime;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Body;

/// <summary>What a rate comes to: at 80 kg the aim begins at 0.2 kg a week and the cap is 0.4 (Iraki et al. 2019, seen).</summary>
public class VerdictTests
{
    private static readonly LocalDate Today = new(2026, 11, 26);

    [Theory]
    [InlineData(0.30, 0.05, GainWord.Stay)]
    [InlineData(0.30, 0.16, GainWord.NoClearTrend)]
    [InlineData(0.00, 0.05, GainWord.More)]
    [InlineData(0.00, 0.15, GainWord.NoClearTrend)]
    [InlineData(-0.40, 0.10, GainWord.More)]
    [InlineData(0.12, 0.05, GainWord.Stay)]
    [InlineData(0.12, 0.03, GainWord.More)]
    [InlineData(0.55, 0.10, GainWord.Less)]
    [InlineData(0.45, 0.10, GainWord.Stay)]
    public void The_verdict_follows_from_rate_and_error(double perWeek, double error, GainWord word) =>
        GainVerdict.Of(new WeightTrend(80, perWeek, error, 28, 28)).Word.Should().Be(word);

    [Theory]
    [InlineData(13, 13)]
    [InlineData(28, 5)]
    public void Too_few_days_or_weighings_have_no_verdict(int days, int weighIns) =>
        GainVerdict.Of(new WeightTrend(80, 0.9, 0.01, weighIns, days)).Word.Should().Be(GainWord.NoClearTrend);

    [Fact]
    public void The_cap_is_a_pound_or_half_a_per_cent_whichever_is_less()
    {
        GainVerdict.Of(new WeightTrend(60, 0, 1, 28, 28)).Cap.Should().BeApproximately(0.30, 1e-9);
        GainVerdict.Of(new WeightTrend(120, 0, 1, 28, 28)).Cap.Should().BeApproximately(0.45359237, 1e-9);
    }

    [Theory] // Two to three pounds a week: common practice; that faster gain is mostly fat: Helms et al. 2023 (seen).
    [InlineData(0.90, false)]
    [InlineData(0.91, true)]
    [InlineData(1.36, true)]
    public void Two_pounds_a_week_and_more_are_told_as_mostly_fat(double perWeek, bool fat) =>
        GainVerdict.Of(new WeightTrend(80, perWeek, 0.1, 28, 28)).MostlyFat.Should().Be(fat);

    // 7700 kcal/kg: Wishnofsky 1958; the cases are worked out by hand.
    [Theory]
    [InlineData(0.25, 2525)]
    [InlineData(-0.20, 3020)]
    [InlineData(0.45359237, 2301)]
    public void The_need_is_learned_from_food_and_rate(double perWeek, double need) =>
        LearnedNeed.Of(new WeightTrend(80, perWeek, 0.082, 28, 28), Eaten(28, 2800), Today)!.Kilocalories.Should().BeApproximately(need, 0.5);

    [Fact] // 7700 x 0.082 / 7 = 90 kcal at 28 daily weighings of 0.5 kg scatter; 255 at 14.
    public void Its_error_is_that_of_the_rate()
    {
        LearnedNeed.Of(new WeightTrend(80, 0.25, 0.082, 28, 28), Eaten(28, 2800), Today)!.Error.Should().BeApproximately(90.2, 0.1);
        LearnedNeed.Of(new WeightTrend(80, 0.25, 0.232, 14, 14), Eaten(14, 2800), Today)!.Error.Should().BeApproximately(255.2, 0.1);
    }

    [Theory]
    [InlineData(22, 28, false)]
    [InlineData(23, 28, true)]
    [InlineData(13, 14, false)]
    public void Fewer_than_four_days_in_five_with_food_teach_nothing(int told, int days, bool learned) =>
        (LearnedNeed.Of(new WeightTrend(80, 0.25, 0.1, days, days), Eaten(told, 2800), Today) is not null).Should().Be(learned);

    // Hall and Chow 2011 and Hall et al. 2011 (numbers second-hand), worked out from the formula.
    [Theory]
    [InlineData(250, 28, 0.744)]
    [InlineData(250, 84, 2.088)]
    [InlineData(250, 365, 6.662)]
    [InlineData(500, 28, 1.488)]
    [InlineData(500, 84, 4.177)]
    [InlineData(500, 365, 13.323)]
    [InlineData(250, 100000, 11.364)]
    [InlineData(500, 100000, 22.727)]
    [InlineData(0, 365, 0)]
    public void The_forecast_is_the_linear_model(double surplus, double days, double kilograms) =>
        WeightForecast.Change(surplus, days).Should().BeApproximately(kilograms, 0.001);

    [Fact] // "About 1 year" to half of it (Hall et al. 2011, seen): 287 days by the model.
    public void Half_of_the_change_has_come_after_287_days() =>
        (WeightForecast.Change(250, 286.7) / WeightForecast.Change(250, 1e6)).Should().BeApproximately(0.5, 0.0005);

    internal static IReadOnlyList<DayTold> Eaten(int days, int kilocalories) =>
    [
        .. Enumerable.Range(0, days).Select(i => new DayTold(new FactId("rack", i + 1), Instant.FromUtc(2026, 11, 26, 8, 0), Today.PlusDays(i + 1 - days))
        {
            Kilocalories = kilocalories,
        }),
    ];
}
