using NodaTime;
using RackSide.Pages.LookBacks;
using RackSide.Pages.Plain;
using RackSide.Tollbooth;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Summary;

namespace RackSide.Pages.Tests.LookBacks;

/// <summary>Looking back at each exercise before and after a session.</summary>
public class LookBackTests
{
    private static readonly Instant Now = TollboothDay.Evening;
    private static readonly LocalDate First = new(2026, 9, 7);
    private static readonly Exercise Squat = TollboothDay.Catalogue["back-squat"];
    private static readonly Exercise Plank = TollboothDay.Catalogue.All.First(e => e.Held && e.LoadType == LoadType.Bodyweight);

    public static TheoryData<string, string, int, int> Pages
    {
        get
        {
            var data = new TheoryData<string, string, int, int>();
            foreach (var (name, keys) in new[] { ("look-back-list", ""), ("look-back-load", "1"), ("look-back-weeks", "1 2"), ("look-back-one-rep", "1 3"), ("look-back-hold", "2") })
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
        page.InAscii().Text.Should().NotContain("?");
    }

    [Fact]
    public void A_terminal_that_has_them_gets_eighths_of_a_block() =>
        Expected.Match(After("1").Draw(new PageSize(80, 24) { Fine = true }, Now), "look-back-load-fine");

    [Theory]
    [InlineData("ENTER")]
    [InlineData("1 ENTER ENTER")]
    [InlineData("1 / ENTER")]
    public void ENTER_opens_the_one_that_is_marked_and_goes_back_to_the_list(string keys) => After(keys).Ended.Should().BeFalse();

    [Theory]
    [InlineData("/")]
    [InlineData("0")]
    [InlineData("ESC")]
    [InlineData("PGUP")]
    [InlineData("q")]
    [InlineData("1 / /")]
    public void Going_back_from_the_list_leaves(string keys) => After(keys).Ended.Should().BeTrue();

    [Theory]
    [InlineData("2 3")]
    [InlineData("1 7")]
    public void A_key_that_does_nothing_says_so(string keys) => Text(After(keys)).Should().Contain(Notice.DeadKey);

    [Fact]
    public void More_than_nine_are_reached_by_the_ninth_line()
    {
        var all = TollboothDay.Catalogue.All.Take(11).ToList();
        all.Count.Should().BeGreaterThan(9);
        var look = new LookBackConversation(all, e => Course(e));

        look.Press("9", Now);

        Text(look).Should().Contain(all[8].Name).And.Contain(all[10].Name).And.NotContain(all[0].Name);
        look.Press("4", Now);
        Text(look).Should().Contain(all[0].Name, "after the last page comes the first");
    }

    [Fact]
    public void Reading_on_stops_at_the_end_and_comes_back()
    {
        var look = After("1");
        var top = look.Draw(new PageSize(50, 15), Now).Text;
        for (var i = 0; i < 200; i++)
        {
            look.Press(KeyPress.Of('-'), Now);
            look.Draw(new PageSize(50, 15), Now);
        }

        look.Draw(new PageSize(50, 15), Now).Text.Should().Contain("That is all.");
        for (var i = 0; i < 200; i++)
        {
            look.Press(KeyPress.Of('+'), Now);
            look.Draw(new PageSize(50, 15), Now);
        }

        look.Draw(new PageSize(50, 15), Now).Text.Should().Be(top);
    }

    [Fact]
    public void Line_by_line_the_chart_is_a_sentence()
    {
        var lines = PlainPage.Of(After("1").Draw(PageSize.ToRead, Now).InAscii()).Lines;

        lines.Should().Contain("load, kg by session: 7 Sep 20, 26 Nov 51.5").And.NotContain(l => l.Contains('#'));
    }

    [Fact]
    public void Nothing_done_yet_is_said()
    {
        var look = new LookBackConversation([], e => Course(e));

        Text(look).Should().Contain("Nothing was done yet.");
        look.Press("ENTER", Now);
        look.Ended.Should().BeTrue();
    }

    private static LookBackConversation After(string keys)
    {
        var look = new LookBackConversation([Squat, Plank], Course);
        look.Press(keys, Now);
        return look;
    }

    private static string Text(LookBackConversation look) => look.Draw(new PageSize(80, 24), Now).Text;

    /// <summary>Twelve weeks, with a week off in the sixth: 1.5 kg or a second more each time.</summary>
    private static ExerciseCourse Course(Exercise exercise) => new(
        exercise, [.. Enumerable.Range(0, 24).Where(i => i / 2 != 5).Select((i, done) => Day(exercise, First.PlusDays((i / 2 * 7) + (i % 2 * 3)), done))], []);

    private static Performance Day(Exercise exercise, LocalDate date, int done)
    {
        Mass? load = exercise == Squat ? Mass.Kg(20 + (1.5m * done)) : null;
        var kind = exercise.Held ? SetKind.Hold : SetKind.Working;
        var each = exercise.Held ? 20 + done : 5;
        var asked = new Prescription
        {
            Slot = "slot",
            Motion = exercise.Motion,
            Exercise = exercise.Id,
            Scheme = new Scheme.Fixed(3, 5),
            Targets = [each, each, each],
            Load = load,
            Rest = Duration.FromMinutes(2),
            Why = new Reason("all-met", "all met"),
        };
        return new Performance(date, asked, [.. Enumerable.Range(1, 3).Select(n => new SetResult(new SetDone(new FactId("t", (done * 10) + n), Now, "slot", exercise.Id, kind, n, each, each, load), n == 3 && done == 9))], CutShort: false)
        {
            Notes = done == 20 ? ["felt hard"] : [],
        };
    }
}
