using NodaTime;
using RackSide.Pages.Rack;

namespace RackSide.Pages.Tests.Rack;

/// <summary>Leaving while entries are not on disk.</summary>
public class UnwrittenTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 25, 18, 40);
    private int count = 3;
    private IReadOnlyList<string> places = ["/media/juno/STICK"];

    public static TheoryData<string, bool, int, int> Pages
    {
        get
        {
            var data = new TheoryData<string, bool, int, int>();
            foreach (var (name, copied) in new[] { ("unwritten", false), ("unwritten-copied", true) })
            {
                foreach (var (columns, rows) in new[] { (50, 15), (80, 24), (120, 40), (30, 8) })
                {
                    data.Add(name, copied, columns, rows);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Each_page_is_as_expected_and_of_safe_glyphs(string name, bool copied, int columns, int rows)
    {
        var page = Asked(copied).Draw(new PageSize(columns, rows), Now);

        Expected.Match(page, name);
        SafeGlyphs.Unsafe(page).Should().BeEmpty();
    }

    [Theory]
    [InlineData("ENTER", null)]
    [InlineData("2", null)]
    [InlineData("4", null)]
    [InlineData("2 ENTER", typeof(UnwrittenChoice.GoBack))]
    [InlineData("3 ENTER", typeof(UnwrittenChoice.CopyTo))]
    [InlineData("4 ENTER", typeof(UnwrittenChoice.LeaveWithout))]
    [InlineData("- - - ENTER", typeof(UnwrittenChoice.LeaveWithout))]
    [InlineData("/ ESC q", null)]
    public void Nothing_is_given_up_by_one_key(string keys, Type? choice)
    {
        var asked = Asked();

        asked.Press(keys, Now);

        asked.Choice?.GetType().Should().Be(choice);
        asked.Ended.Should().Be(choice is not null);
    }

    [Fact]
    public void It_leaves_by_itself_once_all_is_written()
    {
        var asked = Asked();
        asked.Tick(Now);
        asked.Ended.Should().BeFalse();

        count = 0;
        asked.Tick(Now);

        asked.Choice.Should().BeOfType<UnwrittenChoice.AllWritten>();
    }

    [Fact]
    public void A_stick_put_in_meanwhile_is_offered_and_the_marked_line_stays_marked()
    {
        places = [];
        var asked = Asked();
        asked.Press("3", Now);
        Shown(asked).Should().Contain("> 3  leave and give them up");

        places = ["/media/juno/STICK"];
        asked.Tick(Now);

        Shown(asked).Should().Contain("3  copy the logbook with them to /media/juno/STICK").And.Contain("> 4  leave and give them up");
    }

    [Fact]
    public void A_session_that_is_over_cannot_be_gone_back_to() =>
        Shown(new UnwrittenConversation(() => (1, null), () => places, canGoBack: false)).Should().NotContain("back to the session").And.Contain("1 entry of this session is not on disk.");

    private static string Shown(UnwrittenConversation asked) => asked.Draw(new PageSize(80, 24), Now).Text;

    private UnwrittenConversation Asked(bool copied = false) => new(
        () => (count, "No space left on device"),
        () => places,
        canGoBack: true,
        copied ? "Copy written: /media/juno/STICK/logbook-2026-11-25.db. It has all entries; rackside restore brings it back." : null,
        copied);
}
