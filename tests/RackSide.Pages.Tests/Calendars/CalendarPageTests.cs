using NodaTime;
using RackSide.Pages.Calendars;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Schedule;

namespace RackSide.Pages.Tests.Calendars;

public class CalendarPageTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 26, 7, 0);
    private static readonly LocalDate Today = new(2026, 11, 26);

    public static TheoryData<string, string, int, int> Pages
    {
        get
        {
            var data = new TheoryData<string, string, int, int>();
            foreach (var (name, keys) in new[]
            {
                ("calendar", ""), ("calendar-day", "DOWN + + +"), ("away", ""), ("away-from", "1 20.12"), ("away-why", "1 20.12 ENTER 3.1 ENTER"),
                ("more", ""), ("less-time", "35"), ("clock", "27.11"), ("clock-ahead", ""),
            })
            {
                foreach (var (columns, rows) in new[] { (50, 15), (80, 24), (120, 40), (30, 8) })
                {
                    data.Add(name, keys, columns, rows);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Each_page_is_as_expected_and_of_safe_glyphs(string name, string keys, int columns, int rows)
    {
        var conversation = Of(name);
        conversation.Press(keys, Now);

        var page = conversation.Draw(new PageSize(columns, rows), Now);

        Expected.Match(page, name);
        SafeGlyphs.Unsafe(page).Should().BeEmpty();
    }

    [Theory]
    [InlineData("ENTER", true)]
    [InlineData("/", true)]
    [InlineData("ESC", true)]
    [InlineData("+ - UP DOWN", false)]
    [InlineData("7", false)]
    [InlineData("! +", false)]
    public void The_calendar_is_looked_at_and_left(string keys, bool ended)
    {
        var calendar = Of("calendar");
        calendar.Press(keys, Now);
        calendar.Ended.Should().Be(ended);
    }

    [Fact]
    public void The_day_looked_at_says_what_it_is_and_why_and_never_leaves_the_weeks()
    {
        var calendar = Of("calendar");
        Shows(calendar).Should().Contain("Thu 26 Nov, today: rest");
        calendar.Press("+", Now);
        Shows(calendar).Should().Contain("Fri 27 Nov: Strength day").And.Contain("Friday is a strength day");
        calendar.Press("DOWN DOWN DOWN DOWN DOWN DOWN +", Now);
        Shows(calendar).Should().Contain("Sun 20 Dec: away; away until Sun 3 Jan");
    }

    [Theory]
    [InlineData("1 20.12 ENTER 3.1 ENTER 1", "2026-12-20", "2027-01-03", AwayFor.Holiday)]
    [InlineData("1 ENTER ENTER 2", "2026-11-26", null, AwayFor.Illness)]
    [InlineData("1 2026-12-20 ENTER 20261224 ENTER 3", "2026-12-20", "2026-12-24", AwayFor.Other)]
    [InlineData("ENTER 1,12 ENTER 2,12 ENTER ENTER", "2026-12-01", "2026-12-02", AwayFor.Holiday)]
    [InlineData("1 31.11 ENTER BACK BACK BACK BACK BACK 30.11 ENTER / 30.11 ENTER ENTER 1", "2026-11-30", null, AwayFor.Holiday)]
    public void Days_away_are_typed_on_the_pad(string keys, string from, string? until, AwayFor why)
    {
        var away = (AwayConversation)Of("away");
        away.Press(keys, Now);
        var (first, last) = (Iso(from), until is null ? (LocalDate?)null : Iso(until));
        away.Choice.Should().Be(new AwayChoice.Tell(first, last, why));
    }

    [Theory]
    [InlineData("1 31.11 ENTER", "\"31.11\" is not a day of the calendar; write one such as")]
    [InlineData("1 99 ENTER", "\"99\" is not a date; write one such as")]
    [InlineData("1 24.12 ENTER 20.12 ENTER", "the last day comes first")]
    public void A_slip_in_a_date_is_told_in_a_sentence_and_kept_for_mending(string keys, string sentence)
    {
        var away = (AwayConversation)Of("away");
        away.Press(keys, Now);
        (away.Ended, away.Draw(new PageSize(120, 40), Now).Text.Contains(sentence, StringComparison.Ordinal)).Should().Be((false, true));
    }

    [Fact]
    public void Somebody_away_today_can_say_that_they_are_back_and_days_can_be_taken_back()
    {
        var ill = new AwayTold(new FactId("page", 9), Now, Today.PlusDays(-3), null, AwayFor.Illness);
        AwayConversation Away() => new(new AwayTexts(Today, [ill], (_, _) => null));

        var back = Away();
        back.Press("2", Now);
        back.Choice.Should().Be(new AwayChoice.BackAgain());
        var taken = Away();
        taken.Press("3", Now);
        taken.Choice.Should().Be(new AwayChoice.TakeBack(ill));
        var left = Away();
        left.Press("/", Now);
        left.Choice.Should().Be(new AwayChoice.Leave());
    }

    [Theory]
    [InlineData("1", MoreChoice.LessTime)]
    [InlineData("2", MoreChoice.WholePlan)]
    [InlineData("3", MoreChoice.Calendar)]
    [InlineData("4", MoreChoice.Away)]
    [InlineData("5", MoreChoice.CheckIn)]
    [InlineData("6", MoreChoice.Body)]
    [InlineData("7", MoreChoice.Kit)]
    [InlineData("8", MoreChoice.Settings)]
    [InlineData("9", MoreChoice.LookBack)]
    [InlineData("PGUP", MoreChoice.LookBack)]
    [InlineData("/", MoreChoice.Back)]
    public void Behind_the_plan_are_less_time_the_calendar_and_days_away(string keys, MoreChoice choice)
    {
        var more = (MoreConversation)Of("more");
        more.Press(keys, Now);
        more.Choice.Should().Be(choice);
    }

    [Theory]
    [InlineData("35 ENTER", true, 35)]
    [InlineData("9 ENTER", false, null)]
    [InlineData("9 ENTER BACK 120 ENTER", true, 120)]
    [InlineData("ENTER", false, null)]
    [InlineData("35 /", true, null)]
    public void Minutes_are_typed_and_taken_within_reason(string keys, bool ended, int? minutes)
    {
        var less = (LessTimeConversation)Of("less-time");
        less.Press(keys, Now);
        (less.Ended, less.Minutes).Should().Be((ended, minutes));
    }

    [Theory]
    [InlineData("27.11 ENTER", true, "2026-11-27")]
    [InlineData("27.11.2026 ENTER", true, "2026-11-27")]
    [InlineData("26.11 ENTER", true, "2026-11-26")]
    [InlineData("25.11 ENTER", false, null)]
    [InlineData("25.11 ENTER ENTER", true, "2026-11-25")]
    [InlineData("25.11 ENTER BACK BACK BACK BACK BACK 20.11 ENTER", false, null)]
    [InlineData("ENTER", false, null)]
    [InlineData("31.11 ENTER", false, null)]
    [InlineData("/", true, null)]
    public void A_clock_that_lies_is_told_the_date_and_a_date_before_the_last_entry_is_asked_about_once(string keys, bool ended, string? today)
    {
        var clock = (ClockConversation)Of("clock");
        clock.Press(keys, Now);
        (clock.Ended, clock.Today).Should().Be((ended, today is null ? null : Iso(today)));
    }

    private static IConversation Of(string page) => page.Split('-')[0] switch
    {
        "calendar" => new CalendarConversation(TrainingCalendar.For(
            Plan, new TrainingHistory([], [Holiday]), Today, IsoDayOfWeek.Monday)),
        "away" => new AwayConversation(new AwayTexts(Today, [Holiday], (from, until) => until < from ? "the last day comes first" : null)),
        "clock" => page.EndsWith("ahead", StringComparison.Ordinal)
            ? new ClockConversation(new LocalDate(2038, 1, 19), Today, behind: false)
            : new ClockConversation(new LocalDate(1970, 1, 1), Today, behind: true),
        "more" => new MoreConversation("STRENGTH DAY  Thu 26 Nov", trimmed: true),
        _ => new LessTimeConversation("STRENGTH DAY  Thu 26 Nov", Duration.FromMinutes(68)),
    };

    private static AwayTold Holiday { get; } = new(new FactId("page", 1), Now, new LocalDate(2026, 12, 14), new LocalDate(2027, 1, 3), AwayFor.Holiday);

    private static Training.Plans.Plan Plan => new("Tollbooth plan", [Tollbooth.TollboothDay.Strength, Tollbooth.TollboothDay.Skills], new Dictionary<IsoDayOfWeek, string>
    {
        [IsoDayOfWeek.Monday] = Tollbooth.TollboothDay.Strength.Key,
        [IsoDayOfWeek.Wednesday] = Tollbooth.TollboothDay.Skills.Key,
        [IsoDayOfWeek.Friday] = Tollbooth.TollboothDay.Strength.Key,
    });

    private static LocalDate Iso(string text) => NodaTime.Text.LocalDatePattern.Iso.Parse(text).Value;

    private static string Shows(IConversation conversation) => conversation.Draw(new PageSize(80, 24), Now).Text;
}
