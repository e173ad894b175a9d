using System.Globalization;
using NodaTime;
using NodaTime.Text;
using RackSide.Training.Schedule;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Schedule;

/// <summary>The calendar against tables made by other tools; Reference/README.md says by which.</summary>
public class GoldenCalendarTests
{
    private static readonly IReadOnlyList<string[]> Transitions = Rows("dst_transitions.csv");

    [Fact]
    public void Fifty_two_weeks_are_those_that_a_calendar_library_expands()
    {
        // schedule_52w.csv
        foreach (var zone in Rows("schedule_52w.csv").GroupBy(r => r[0]))
        {
            var expected = zone.Select(r => (Date(r[2]), r[4])).OrderBy(r => r.Item1);
            var ahead = DueRule.Ahead(Weeks.Usual, [], new LocalDate(2026, 1, 5), 52 * 7);

            ahead.Where(a => a.Kind == DueKind.Train).Select(a => (a.Date, a.Day!.Key)).Should().Equal(expected, zone.Key);
        }
    }

    [Fact]
    public void Every_day_of_fourteen_years_is_in_the_week_that_the_table_says()
    {
        var rows = Rows("iso_week_all_2019_2032.csv");

        rows.Should().HaveCount(5114);
        rows.Should().OnlyContain(r => IsoWeek.Of(Date(r[0])) == new IsoWeek(Number(r[1]), Number(r[2])));
        rows.Where(r => r[2] == "53").Select(r => r[1]).Distinct().Should().Equal("2020", "2026", "2032");
    }

    [Fact]
    public void The_zones_that_come_along_change_when_the_systems_table_does()
    {
        Transitions.Should().HaveCount(80);
        foreach (var r in Transitions)
        {
            var (zone, at) = (DateTimeZoneProviders.Tzdb[r[0]], Instant(r[1]));
            (zone.GetUtcOffset(at - Duration.Epsilon).Seconds, zone.GetUtcOffset(at).Seconds).Should().Be((Number(r[4]), Number(r[5])), r[1]);
        }
    }

    [Fact]
    public void No_training_day_moves_where_the_clocks_change()
    {
        foreach (var r in Transitions)
        {
            // A lifter who trained in the evening two days before is asked what is due in each hour around the change.
            var (zone, at) = (DateTimeZoneProviders.Tzdb[r[0]], Instant(r[1]));
            var monday = at.InZone(zone).Date.PlusDays(1).Previous(IsoDayOfWeek.Monday);
            var asked = Enumerable.Range(-72, 144).Select(h => (at + Duration.FromHours(h)).InZone(zone).Date).Distinct().ToList();
            asked.Zip(asked.Skip(1)).Should().OnlyContain(p => p.First.PlusDays(1) == p.Second, "no date is left out or comes twice");
            var ahead = DueRule.Ahead(Weeks.Usual, [], monday, 14).Where(a => a.Kind == DueKind.Train).Select(a => (a.Date.DayOfWeek, a.Day!.Key));
            ahead.Should().OnlyContain(a => Weeks.Usual.Week[a.DayOfWeek] == a.Key, r[1]);
        }
    }

    [Fact]
    public void No_rest_is_longer_or_shorter_for_a_clock_that_was_put_forward_or_back_in_it()
    {
        foreach (var r in Transitions)
        {
            var begun = Instant(r[1]) - Duration.FromSeconds(45);
            var clock = RestClock.Start(begun, Duration.FromMinutes(2));

            clock.Left(begun + Duration.FromSeconds(90)).Should().Be(Duration.FromSeconds(30), r[1]);
        }
    }

    private static IReadOnlyList<string[]> Rows(string file) =>
        [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Schedule", "Reference", file)).Skip(1).Select(line => line.Split(','))];

    private static LocalDate Date(string text) => LocalDatePattern.Iso.Parse(text).Value;

    private static Instant Instant(string text) => InstantPattern.General.Parse(text).Value;

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
