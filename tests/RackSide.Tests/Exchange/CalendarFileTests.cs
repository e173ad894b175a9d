using System.Globalization;
using System.Text;
using CsCheck;
using NodaTime;
using NodaTime.Text;
using RackSide.Exchange;
using RackSide.Files;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Tests.Exchange;

/// <summary>Calendar files, read back by Ical.Net 5.2.4, a library of RFC 5545 that the program does not use.</summary>
public class CalendarFileTests
{
    private static readonly Plan Plan = PlanFile.Default(CatalogueFile.Read());
    private static readonly Instant Now = Instant.FromUtc(2026, 3, 23, 7, 0);
    private static readonly Lifter Ottoline = new("ottoline", "Ottoline Marsh", MassUnit.Kilogram, Now);

    [Theory] // schedule_52w.csv: strength and skills at 18:30 in three zones, expanded from RRULEs by the library.
    [InlineData("Europe/London", "2026-03-23")]
    [InlineData("Europe/London", "2026-10-19")]
    [InlineData("America/New_York", "2026-03-02")]
    [InlineData("America/New_York", "2026-10-19")]
    [InlineData("Australia/Lord_Howe", "2026-03-30")]
    [InlineData("Australia/Lord_Howe", "2026-09-28")]
    public void Hours_stay_the_same_in_the_gym_where_the_clocks_change(string zone, string monday)
    {
        var first = LocalDatePattern.Iso.Parse(monday).Value;
        var expected = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Reference", "schedule_52w.csv")).Skip(1)
            .Select(l => l.Split(',')).Where(r => r[0] == zone && string.CompareOrdinal(r[2], monday) >= 0).Select(r => r[6]).Take(12);

        var starts = Read(Write(TrainingEvents.Of(Plan, TrainingHistory.Empty, first), zone)).Events
            .Select(e => e.DtStart!.AsUtc.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture));

        starts.Order().Should().Equal(expected);
    }

    [Fact]
    public void A_calendar_library_reads_what_is_written()
    {
        var events = TrainingEvents.Of(Plan, Lived("strength-day 2026-03-18"), new LocalDate(2026, 3, 23));

        var read = Read(Write(events, "Europe/London", remind: 30));

        read.Events.Should().HaveCount(13).And.OnlyHaveUniqueItems(e => e.Uid);
        var next = read.Events.Single(e => e.DtStart!.AsUtc == new DateTime(2026, 3, 23, 18, 30, 0, DateTimeKind.Utc));
        (next.Summary, next.Description, next.Status).Should().Be(("Strength day", "Monday is a strength day", "CONFIRMED"));
        next.EffectiveDuration.ToTimeSpanUnspecified().Should().Be(TimeSpan.FromMinutes(75));
        next.DtStamp!.AsUtc.Should().Be(Now.ToDateTimeUtc());
        next.Alarms.Should().ContainSingle().Which.Trigger!.Duration!.Value.ToTimeSpanUnspecified().Should().Be(TimeSpan.FromMinutes(-30));
        read.Events.Single(e => e.Description == "done").Alarms.Should().BeEmpty();
    }

    [Fact]
    public void Without_an_hour_a_training_day_lasts_the_day_and_moves_no_clock() =>
        Read(CalendarFile.Of(Ottoline, TrainingEvents.Of(Plan, TrainingHistory.Empty, new LocalDate(2026, 3, 23)), Times("Europe/London") with { At = null }, Now))
            .Events.Should().OnlyContain(e => e.IsAllDay && !e.DtStart!.HasTime);

    [Fact]
    public void Any_name_is_read_back_as_it_is_and_no_line_is_longer_than_75_octets() => Gen.String[0, 300].Sample(name =>
    {
        // Control characters are not text in RFC 5545, and half a surrogate pair is no character.
        var plain = string.Concat(name.EnumerateRunes().Where(r => r.Value != 0xFFFD && !Rune.IsControl(r)).Select(r => r.ToString())).Trim();
        var written = CalendarFile.Of(Ottoline, [new TrainingEvent(DayKind.Strength, 1, new LocalDate(2026, 3, 23), "x" + plain + "x", plain + ";,\\ \n end")], Times("Europe/London"), Now);

        written.Split("\r\n").Should().OnlyContain(line => Encoding.UTF8.GetByteCount(line) <= 75);
        written.Replace("\r\n", "", StringComparison.Ordinal).Should().NotContain("\n").And.NotContain("\r");
        var read = Read(written).Events.Single();
        (read.Summary, read.Description).Should().Be(("x" + plain + "x", plain + ";,\\ \n end"));
    });

    [Fact]
    public void A_later_file_over_an_earlier_one_leaves_no_day_behind_and_none_twice() =>
        Gen.Select(Gen.Int[0, 9].Array[150], Gen.Bool).Sample((chances, rolls) =>
        {
            var plan = rolls ? Plan.AsRolling() : Plan;
            var (done, calendar) = (new List<string>(), new Dictionary<string, (LocalDate Date, bool Off)>());
            for (var i = 0; i < chances.Length; i++)
            {
                var today = new LocalDate(2026, 1, 5).PlusDays(i);
                if (chances[i] >= 8)
                {
                    Import(calendar, TrainingEvents.Of(plan, Lived([.. done]), today));
                    Standing(calendar, today).Should().Equal(TrainingEvents.Of(plan, Lived([.. done]), today).Where(e => !e.Off && e.Date >= today).Select(e => e.Date));
                }
                else if (chances[i] >= 4 && RackSide.Training.Schedule.DueRule.For(plan, Lived([.. done]).Days, today).Day is { } day)
                {
                    done.Add($"{day.Key} {LocalDatePattern.Iso.Format(today)}");
                }
                else if (chances[i] == 0 && !done.Exists(d => d.EndsWith(LocalDatePattern.Iso.Format(today), StringComparison.Ordinal)))
                {
                    done.Add($"{(i % 2 == 0 ? "skills-day" : "strength-day")} {LocalDatePattern.Iso.Format(today)}");
                }
            }
        }, iter: 20);

    [Fact]
    public void Training_days_of_somebody_away_for_nobody_knows_how_long_are_off()
    {
        var today = new LocalDate(2026, 3, 23);
        var away = new AwayTold(new FactId("test", 1), Now, today, null, AwayFor.Illness);
        var events = TrainingEvents.Of(Plan, new TrainingHistory([], [away]), today);

        events.Should().HaveCount(12).And.OnlyContain(e => e.Off);
        Read(Write(events, "Europe/London")).Events.Should().OnlyContain(e => e.Status == "CANCELLED");
    }

    [Fact]
    public void A_later_file_has_a_higher_sequence_and_the_same_moment_the_same_file()
    {
        var events = TrainingEvents.Of(Plan, TrainingHistory.Empty, new LocalDate(2026, 3, 23));
        string At(Instant now) => CalendarFile.Of(Ottoline, events, Times("Europe/London"), now);

        At(Now).Should().Be(At(Now));
        Read(At(Now + Duration.FromMinutes(1))).Events[0]!.Sequence.Should().BeGreaterThan(Read(At(Now)).Events[0]!.Sequence);
    }

    private static void Import(Dictionary<string, (LocalDate Date, bool Off)> calendar, IReadOnlyList<TrainingEvent> events)
    {
        foreach (var e in events)
        {
            calendar[CalendarFile.Uid(Ottoline, e)] = (e.Date, e.Off);
        }
    }

    private static IEnumerable<LocalDate> Standing(Dictionary<string, (LocalDate Date, bool Off)> calendar, LocalDate today) =>
        calendar.Values.Where(e => !e.Off && e.Date >= today).Select(e => e.Date).Order();

    private static TrainingHistory Lived(params string[] days) => new([.. days.Select((text, i) =>
    {
        var (key, date) = (text.Split(' ')[0], LocalDatePattern.Iso.Parse(text.Split(' ')[1]).Value);
        var head = new SessionHead
        {
            Id = new FactId("test", (i * 10) + 1),
            Begun = date.At(new LocalTime(18, 30)).InUtc().ToInstant(),
            Date = date,
            Zone = "UTC",
            Lifter = Ottoline.Key,
            Plan = Plan.Name,
            DayKey = key,
            DayName = Plan.Day(key)!.Name,
            Kind = Plan.Day(key)!.Kind,
            Prescriptions = [],
        };
        return new SessionRecord(head, [new SetDone(new FactId("test", (i * 10) + 2), head.Begun, "squat", "back-squat", SetKind.Working, 1, 5, 5, Mass.Kg(20))]);
    })]);

    private static string Write(IReadOnlyList<TrainingEvent> events, string zone, int? remind = null) =>
        CalendarFile.Of(Ottoline, events, Times(zone) with { Remind = remind }, Now);

    private static CalendarTimes Times(string zone) => new(new LocalTime(18, 30), DateTimeZoneProviders.Tzdb[zone], _ => 75, null);

    private static Ical.Net.Calendar Read(string text) => Ical.Net.Calendar.Load(text)!;
}
