using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Summary;
using static RackSide.Training.Tests.Planning.Tollbooth;

namespace RackSide.Training.Tests.Summary;

/// <summary>The week page where a week begins and ends, in a year of 53 weeks and where clocks are changed.</summary>
public class WeekEdgesTests
{
    private static readonly DateTimeZone London = DateTimeZoneProviders.Tzdb["Europe/London"];

    [Fact]
    public void A_session_over_midnight_on_Sunday_is_of_the_week_it_began_in_to_its_last_set()
    {
        var sunday = Monday.PlusDays(6);
        var history = Held(new LocalDateTime(2026, 11, 8, 23, 30), new LocalDateTime(2026, 11, 9, 0, 20));

        var (before, after) = (Of(history, sunday), Of(history, sunday.PlusDays(1)));

        (before.Done.Count, before.Work.Sets, before.Work.Trained).Should().Be((1, 26, Duration.FromMinutes(50)));
        (after.Done.Count, after.Work.Sets, after.Work.Trained).Should().Be((0, 0, Duration.Zero));
        before.Work.HoldSeconds.Should().Be(60);
        before.Muscles.Should().BeEquivalentTo(MuscleSets.Of(history.Sessions, AllExercises));
    }

    // The European Union's directive 2000/84/EC: clocks change at 01:00 UTC on the last Sundays of March and October; in London,
    // by the tz database, 01:00 becomes 02:00 on 28 March 2027 and 02:00 becomes 01:00 on 25 October 2026.
    [Theory]
    [InlineData("2026-10-25T00:40", "2026-10-25T00:55", 15, "before the clocks go back")]
    [InlineData("2026-10-25T00:40", "2026-10-25T02:10", 150, "the hour is there twice")]
    [InlineData("2027-03-28T00:40", "2027-03-28T02:10", 30, "the hour is left out")]
    public void The_time_trained_is_the_time_that_passed_whatever_the_clocks_do(string begun, string last, int minutes, string why)
    {
        var (from, to) = (At(begun), At(last));

        var week = Of(Held(from, to), from.Date);

        week.Work.Trained.Should().Be(Duration.FromMinutes(minutes), why);
        week.Week.Sunday.Should().Be(from.Date);
    }

    [Theory]
    [InlineData(2026, 10, 19, 2026, 10, 25)]
    [InlineData(2027, 3, 22, 2027, 3, 28)]
    public void A_week_in_which_clocks_change_has_seven_days(int year, int month, int day, int lastYear, int lastMonth, int lastDay)
    {
        var (monday, sunday) = (new LocalDate(year, month, day), new LocalDate(lastYear, lastMonth, lastDay));
        var history = new TrainingHistory([.. new[] { monday, sunday }.SelectMany((d, i) => Held(d.At(new LocalTime(i == 0 ? 0 : 23, 30)), d.At(new LocalTime(i == 0 ? 1 : 23, 50))).Sessions)]);

        Of(history, sunday).Done.Select(d => d.Date).Should().Equal(monday, sunday);
    }

    [Fact]
    public void The_53rd_week_reaches_into_January_and_the_first_week_looks_back_at_it()
    {
        WeighIn[] weighIns = [new(new(2026, 12, 31), Mass.Kg(72)), new(new(2027, 1, 3), Mass.Kg(72.4m)), new(new(2027, 1, 4), Mass.Kg(72.5m))];
        var history = new TrainingHistory([.. Day(2026, 12, 28), .. Day(2026, 12, 31), .. Day(2027, 1, 3), .. Day(2027, 1, 4)]);

        var (last, first) = (Of(history, new(2027, 1, 3), weighIns), Of(history, new(2027, 1, 4), weighIns));

        last.Lines[0].Should().Be("week 53 of 2026, 28 Dec to 3 Jan: 3 of 3 training days done");
        last.Body!.Mean.Should().Be(Mass.Kg(72.2m));
        (first.Done.Count, first.Body!.Change).Should().Be((1, Mass.Kg(0.3m)));
    }

    private static IEnumerable<SessionRecord> Day(int year, int month, int day) =>
        Held(new LocalDateTime(year, month, day, 18, 0), new LocalDateTime(year, month, day, 19, 0)).Sessions;

    /// <summary>A strength day as asked, from one wall-clock time in London to another; of two alike the later.</summary>
    private static TrainingHistory Held(LocalDateTime begun, LocalDateTime last)
    {
        var session = Session(Today(TrainingHistory.Empty, begun.Date, StrengthDay), begun.Date, AsAsked);
        var (from, to) = (London.ResolveLocal(begun, m => m.First()).ToInstant(), London.ResolveLocal(last, m => m.Last()).ToInstant());
        return new([session with
        {
            Head = session.Head with { Begun = from },
            Facts = [.. session.Facts.Select((f, i) => f is SetDone set ? set with { At = i == session.Facts.Count - 2 ? to : from } : f)],
        }]);
    }

    private static LocalDateTime At(string text) => NodaTime.Text.LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm").Parse(text).Value;

    private static WeekSummary Of(TrainingHistory history, LocalDate today, IReadOnlyList<WeighIn>? weighIns = null) =>
        WeekSummary.For(Beginners, AllExercises, Garage, Ottoline, history, weighIns ?? [], today);
}
