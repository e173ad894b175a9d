using NodaTime;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Training.Tests.Body;

public class BodyTests
{
    private static readonly IsoWeek Week = IsoWeek.Of(new LocalDate(2026, 12, 31));

    [Fact]
    public void A_week_is_its_plain_mean_and_runs_over_the_year_end()
    {
        WeighIn[] readings =
        [
            new(new LocalDate(2026, 12, 27), Mass.Kg(90)),
            new(new LocalDate(2026, 12, 28), Mass.Kg(72)),
            new(new LocalDate(2027, 1, 1), Mass.Kg(73)),
            new(new LocalDate(2027, 1, 3), Mass.Kg(73.1m)),
            new(new LocalDate(2027, 1, 4), Mass.Kg(90)),
        ];

        WeekMean.Of(readings, Week, MassUnit.Kilogram).Should().Be(Mass.Kg(72.7m));
    }

    [Fact]
    public void Readings_of_both_units_have_one_mean()
    {
        WeighIn[] readings =
            [new(new LocalDate(2026, 12, 28), Mass.Lb(160)), new(new LocalDate(2026, 12, 29), Mass.Kg(72.5747792m))];

        // 160 lb is 72.5747792 kg (1959 agreement, exact).
        WeekMean.Of(readings, Week, MassUnit.Pound)!.Value.Amount.Should().BeApproximately(160, 1e-9m);
    }

    [Fact]
    public void A_week_without_a_reading_has_no_mean() => WeekMean.Of([], Week, MassUnit.Kilogram).Should().BeNull();

    [Theory] // Iraki et al. 2019, Sports 7(7):154: 0.25-0.5 % a week; 0.5 % reaches one pound at 90.7 kg.
    [InlineData(60, 0.30)]
    [InlineData(80, 0.40)]
    [InlineData(90.7, 0.4535)]
    [InlineData(90.8, 0.45359237)]
    [InlineData(120, 0.45359237)]
    public void The_cap_is_half_a_per_cent_or_a_pound_whichever_is_less(double weight, double cap) =>
        GainCap.PerWeek(Mass.Kg((decimal)weight)).Should().Be(Mass.Kg((decimal)cap));

    [Theory]
    [InlineData(160, 0.8)]
    [InlineData(240, 1)]
    public void The_cap_in_pounds_is_told_in_pounds(int weight, double cap) =>
        GainCap.PerWeek(Mass.Lb(weight)).Should().Be(Mass.Lb((decimal)cap));
}
