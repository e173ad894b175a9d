using NodaTime;
using RackSide.Commands;
using RackSide.Training.Schedule;

namespace RackSide.Tests.Commands;

public class WeekEntryTests
{
    /// <summary>Source: GNU date 9.1, <c>date -d DATE +%G-W%V</c>.</summary>
    [Theory]
    [InlineData(2020, 12, 31, "2020-W53")]
    [InlineData(2026, 12, 31, "2026-W53")]
    [InlineData(2027, 1, 3, "2026-W53")]
    [InlineData(2027, 1, 4, "2027-W01")]
    public void A_date_and_its_written_week_agree(int year, int month, int day, string written)
    {
        var date = new LocalDate(year, month, day);

        WeekEntry.Text(IsoWeek.Of(date)).Should().Be(written);
        WeekEntry.Parse(written).Holds(date).Should().BeTrue();
    }

    [Theory]
    [InlineData("")]
    [InlineData("W48")]
    [InlineData("2026-48")]
    [InlineData("2026-W")]
    [InlineData("2026-W481")]
    [InlineData("2026-W4８")]
    [InlineData("0026-W48")]
    public void What_is_no_week_is_refused(string text)
    {
        var parse = () => WeekEntry.Parse(text);

        parse.Should().Throw<Refusal>().Which.Code.Should().Be(64);
    }
}
