using NodaTime;
using RackSide.Pages.Rack;
using RackSide.Tollbooth;
using RackSide.Training.Planning;
using TheRack = RackSide.Tollbooth.Rack;

namespace RackSide.Pages.Tests.Rack;

public class TodayAndWeekTests
{
    private static readonly Instant Now = TollboothDay.Evening;

    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(30, 8)]
    public void Today_shows_each_slot_with_its_sets_its_load_and_why(int columns, int rows)
    {
        var page = Today("+").Draw(new PageSize(columns, rows), Now);

        Expected.Match(page, "rack-today");
        SafeGlyphs.Unsafe(page).Should().BeEmpty();
    }

    [Theory]
    [InlineData("ENTER", true, true)]
    [InlineData("/", true, false)]
    [InlineData("q", true, false)]
    [InlineData("+ + 3 - DOWN UP", false, false)]
    [InlineData("! +", false, false)]
    [InlineData("! ENTER ENTER", true, true)]
    [InlineData("*", true, false)]
    public void Only_ENTER_begins_and_only_leaving_leaves(string keys, bool ended, bool begun)
    {
        var today = Today(keys);

        (today.Ended, today.Begun).Should().Be((ended, begun));
    }

    [Fact]
    public void PGUP_looks_back_before_the_session_begins() =>
        Today("PGUP").Should().Match<TodayConversation>(t => t.Ended && t.LooksBack && !t.Begun);

    [Fact]
    public void On_a_compact_page_the_why_line_is_that_of_the_slot_looked_at()
    {
        var page = new PageSize(50, 15);
        Today("1").Draw(page, Now).Text.Should().Contain("why: all 5x5 done");
        Today("2").Draw(page, Now).Text.Should().Contain("why: first time");
    }

    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void What_is_offered_beside_the_load_stands_under_the_slots(int columns, int rows)
    {
        var asked = TollboothDay.Begin(TollboothDay.Strength, TollboothDay.SquatOnMonday(65, 5, 5, 5, 5, 4)).Head.Prescriptions;
        var today = new TodayConversation(new TodayTexts("STRENGTH DAY", "why", asked, Duration.FromMinutes(41), ""), TollboothDay.Catalogue);

        string.Join(' ', today.Draw(new PageSize(columns, rows), Now).Text.Split('\n').Select(l => l.Trim()))
            .Should().Contain("advice: rest longer first: 3 min between sets");
    }

    [Theory]
    [InlineData(50, 15)]
    public void On_a_small_page_the_slot_looked_at_says_what_it_stands_in_for(int columns, int rows)
    {
        var asked = TollboothDay.Begin(TollboothDay.Strength, TollboothDay.SquatOnMonday(65, 5, 5, 5, 5, 5)).Head.Prescriptions;
        var standIn = new StandIn(asked[0].Slot, TollboothDay.Catalogue["bb-row"], TollboothDay.Catalogue["back-squat"], "no bar");
        var texts = new TodayTexts("STRENGTH DAY", "why", asked, Duration.FromMinutes(41), "") { StandIns = [standIn] };
        var today = new TodayConversation(texts, TollboothDay.Catalogue);

        string.Join(' ', today.Draw(new PageSize(columns, rows), Now).Text.Split('\n').Select(l => l.Trim())).Should().Contain($"standing in: {standIn.Text}");
    }

    [Fact]
    public void A_list_of_plates_that_a_small_page_cuts_off_does_not_look_whole()
    {
        var asked = TollboothDay.Begin(TollboothDay.Strength, TollboothDay.SquatOnMonday(65, 5, 5, 5, 5, 5)).Head.Prescriptions;
        var plates = "Plates at hand: " + string.Join(", ", Enumerable.Range(1, 30).Select(pairs => $"{pairs} x 2.5"));
        var today = new TodayConversation(new TodayTexts("STRENGTH DAY", "why", asked, Duration.FromMinutes(41), plates), TollboothDay.Catalogue);

        today.Draw(new PageSize(50, 15), Now).Text.Split('\n')[11].Should().EndWith(" ...");
    }

    [Fact]
    public void Halved_sets_are_shown_as_asked_for_and_not_as_the_plan_has_them()
    {
        var asked = TollboothDay.Begin(TollboothDay.Strength, TollboothDay.SquatOnMonday(65, 5, 5, 5, 5, 5)).Head.Prescriptions[0];

        PlanLines.Sets(asked with { Targets = [5, 5, 5] }).Should().Be("3x5");
    }

    [Theory]
    [InlineData("ENTER", ResumeChoice.GoOn)]
    [InlineData("5", ResumeChoice.Close)]
    [InlineData("/", ResumeChoice.Leave)]
    public void A_session_left_open_goes_on_by_one_key(string keys, ResumeChoice choice)
    {
        var resume = new ResumeConversation("STRENGTH DAY  Wed 25 Nov", "Barbell back squat, working set 3 of 5, is next; stopped at 18:41.");
        resume.Press("7 +", Now);
        resume.Choice.Should().BeNull();

        resume.Press(keys, Now);

        resume.Choice.Should().Be(choice);
    }

    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    [InlineData(30, 8)]
    public void A_session_left_open_is_told_with_the_set_that_is_next(int columns, int rows) => Expected.Match(
        new ResumeConversation("STRENGTH DAY  Wed 25 Nov", "Barbell back squat, working set 3 of 5, is next; stopped at 18:41 on Wed 25 Nov.")
            .Draw(new PageSize(columns, rows), Now),
        "rack-resume");

    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_week_page_stands_alone_on_a_rest_day(int columns, int rows)
    {
        var week = new WeekConversation(RackPages.Week(RackPages.At("finish")));

        Expected.Match(week.Draw(new PageSize(columns, rows), Now), "rack-week");
        week.Press(KeyPress.Of('7'), Now);
        week.Ended.Should().BeTrue();
    }

    private static TodayConversation Today(string keys)
    {
        var session = TollboothDay.Begin(TollboothDay.Strength, TollboothDay.SquatOnMonday(65, 5, 5, 5, 5, 5));
        var today = new TodayConversation(
            new TodayTexts(
                "STRENGTH DAY  Wed 25 Nov",
                "Wednesday is a strength day",
                session.Head.Prescriptions,
                Duration.FromMinutes(41),
                "Plates at hand: 2 x 20, 2 x 2.5, 2 x 1.25 kg."),
            TollboothDay.Catalogue);
        today.Press(keys, Now);
        return today;
    }
}
