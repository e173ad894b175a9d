using NodaTime;
using RackSide.Pages.RestDays;
using RackSide.Training.Body;
using RackSide.Training.Measures;

namespace RackSide.Pages.Tests.RestDays;

public class RestDayTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 26, 7, 0);

    private static readonly RestDayTexts Texts = new(
        "REST DAY",
        "Thu 26 Nov",
        "Nothing is planned today: the strength day was yesterday.",
        "Fri 27 Nov, skills day",
        "tuck hold, wall handstand, hollow hold, 30 min");

    public static TheoryData<string, string, int, int> Pages
    {
        get
        {
            var data = new TheoryData<string, string, int, int>();
            foreach (var (name, keys) in new[] { ("rest-day", "") })
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
        var page = After(keys).Draw(new PageSize(columns, rows), Now);
        Expected.Match(page, name);
        SafeGlyphs.Unsafe(page).Should().BeEmpty();
    }

    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Why_and_what_comes_next_are_told_at_every_working_size(int columns, int rows)
    {
        var told = After("").Draw(new PageSize(columns, rows), Now).Text.Split([' ', '\n']);
        told.Should().Contain(Texts.Why.Split(' ')).And.Contain(Texts.Next.TrimEnd('y').Split(' ')[..2]).And.Contain("30");
    }

    [Theory]
    [InlineData("ENTER")]
    [InlineData("SPACE")]
    [InlineData("7")]
    [InlineData("+ - ENTER")]
    public void Enter_leaves(string keys) => After(keys).Choice.Should().Be(new RestDayChoice.Leave());

    [Theory]
    [InlineData("1")]
    [InlineData("+ + + + + + ENTER")]
    [InlineData("UP UP UP UP UP UP UP ENTER")]
    public void An_extra_session_can_be_asked_for(string keys) =>
        After(keys).Choice.Should().Be(new RestDayChoice.TrainAnyway());

    [Fact]
    public void The_week_can_be_asked_for() => After("3").Choice.Should().Be(new RestDayChoice.WeekPage());

    [Fact]
    public void A_check_in_and_the_page_of_the_body_can_be_asked_for()
    {
        After("2").Choice.Should().Be(new RestDayChoice.CheckIn());
        After("6 1").Choice.Should().Be(new RestDayChoice.BodyPage());
    }

    [Fact]
    public void Where_they_are_hidden_no_word_of_them_is_left()
    {
        var hidden = new RestDayConversation(Texts with { Hidden = true });

        hidden.Draw(new PageSize(80, 24), Now).Text.Should().NotContain("weight").And.NotContain("food");
        hidden.Press("6", Now);
        hidden.Choice.Should().Be(new RestDayChoice.Leave());
    }

    [Fact]
    public void The_calendar_and_the_days_away_can_be_asked_for()
    {
        After("4").Choice.Should().Be(new RestDayChoice.CalendarPage());
        After("5").Choice.Should().Be(new RestDayChoice.AwayPage());
        After("6 2").Choice.Should().Be(new RestDayChoice.KitPage());
        After("6 3").Choice.Should().Be(new RestDayChoice.Settings());
        After("6 4").Choice.Should().Be(new RestDayChoice.LookBack());
        After("PGUP").Choice.Should().Be(new RestDayChoice.LookBack());
        After("6 / 3").Choice.Should().Be(new RestDayChoice.WeekPage());
        After("6 5 3").Choice.Should().Be(new RestDayChoice.WeekPage());
    }

    // 20 kg is 44.09 lb and 350 kg is 771.6 lb; 1 lb is exactly 0.45359237 kg (NIST SP 811, appendix B).
    [Theory]
    [InlineData("44", null)]
    [InlineData("45", 45)]
    [InlineData("771", 771)]
    [InlineData("772", null)]
    public void The_same_bounds_hold_in_pounds(string typed, int? pounds) =>
        BodyWeightEntry.Read(typed, MassUnit.Pound).Should().Be(pounds is { } lb ? Mass.Lb(lb) : null);

    [Fact]
    public void The_bounds_are_told_in_the_lifters_unit() =>
        BodyWeightEntry.Refusal(MassUnit.Pound).Should().Be("Type a body weight, 45 to 771 lb.");

    [Theory]
    [InlineData("x", Notice.DeadKey)]
    [InlineData("0", Notice.DeadKey)]
    [InlineData("/", Notice.DeadKey)]
    public void A_key_without_effect_says_so_for_two_seconds(string keys, string sentence)
    {
        var conversation = After(keys);
        conversation.Ended.Should().BeFalse();
        conversation.Draw(new PageSize(80, 24), Now).Text.Should().Contain(sentence);
        conversation.Draw(new PageSize(80, 24), Now + Notice.Stands).Text.Should().NotContain(sentence);
    }

    [Fact]
    public void The_stop_signs_are_one_key_away() => After("!").Draw(new PageSize(50, 15), Now).Text.Should().Contain("STOP SIGNS");

    [Fact]
    public void What_was_done_already_is_told_in_the_top_line() =>
        new RestDayConversation(Texts with { Done = "check-in written" }).Draw(new PageSize(50, 15), Now).Text
            .Split('\n')[0].Should().Be("REST DAY  Thu 26 Nov              check-in written");

    private static RestDayConversation After(string keys)
    {
        var conversation = new RestDayConversation(Texts);
        conversation.Press(keys, Now);
        return conversation;
    }
}
