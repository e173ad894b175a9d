using System.Globalization;
using NodaTime;
using NodaTime.Text;
using RackSide.Training.Schedule;

namespace RackSide.Training.Tests.Schedule;

public class IsoWeekTests
{
    [Fact]
    public void Weeks_around_year_ends_agree_with_the_reference_table()
    {
        // Reference/iso_week_yearends.csv: GNU date, see the README beside it.
        var rows = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Schedule", "Reference", "iso_week_yearends.csv"))
            .Skip(1).Select(line => line.Split(',')).ToList();

        rows.Should().HaveCount(315);
        rows.Should().OnlyContain(r => IsoWeek.Of(LocalDatePattern.Iso.Parse(r[0]).Value) == new IsoWeek(Number(r[1]), Number(r[2])));
    }

    [Theory] // ISO 8601 week dates, worked examples of the standard's rule.
    [InlineData(2026, 12, 31, 2026, 53)]
    [InlineData(2027, 1, 3, 2026, 53)]
    [InlineData(2027, 1, 4, 2027, 1)]
    [InlineData(2005, 1, 1, 2004, 53)]
    [InlineData(2008, 12, 29, 2009, 1)]
    public void A_week_belongs_to_the_year_of_its_Thursday(int year, int month, int day, int weekYear, int week) =>
        IsoWeek.Of(new LocalDate(year, month, day)).Should().Be(new IsoWeek(weekYear, week));

    [Fact]
    public void A_week_knows_its_days_and_the_week_before()
    {
        var week = IsoWeek.Of(new LocalDate(2027, 1, 4));

        week.Monday.Should().Be(new LocalDate(2027, 1, 4));
        week.Sunday.Should().Be(new LocalDate(2027, 1, 10));
        week.Before.Should().Be(new IsoWeek(2026, 53));
        week.Before.Holds(new LocalDate(2026, 12, 31)).Should().BeTrue();
        week.Holds(new LocalDate(2027, 1, 11)).Should().BeFalse();
    }

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
