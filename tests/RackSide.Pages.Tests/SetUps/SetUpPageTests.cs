using NodaTime;

namespace RackSide.Pages.Tests.SetUps;

public class SetUpPageTests
{
    [Theory]
    [MemberData(nameof(SetUpPages.AtAllSizes), MemberType = typeof(SetUpPages))]
    public void Each_page_is_as_expected(string name, int columns, int rows) =>
        Expected.Match(Drawn(name, columns, rows), name);

    [Theory]
    [MemberData(nameof(SetUpPages.AtAllSizes), MemberType = typeof(SetUpPages))]
    public void Each_page_draws_with_safe_glyphs_only(string name, int columns, int rows) =>
        SafeGlyphs.Unsafe(Drawn(name, columns, rows)).Should().BeEmpty();

    [Theory]
    [MemberData(nameof(SetUpPages.AtWorkingSizes), MemberType = typeof(SetUpPages))]
    public void Each_page_is_complete_from_50_by_15_up(string name, int columns, int rows)
    {
        var roomy = Words(Drawn(name, 200, 60));
        roomy.Should().NotBeEmpty();
        Words(Drawn(name, columns, rows)).Should().BeEquivalentTo(roomy);
    }

    [Theory]
    [MemberData(nameof(SetUpPages.AtAllSizes), MemberType = typeof(SetUpPages))]
    public void The_cursor_stands_on_a_line_that_says_something(string name, int columns, int rows)
    {
        var page = Drawn(name, columns, rows);
        page.Text.Split('\n')[page.CursorRow].Should().NotBeNullOrWhiteSpace();
        page.CursorRow.Should().BeInRange(Frame.Top(page.Size), Frame.Bottom(page.Size) - 1);
    }

    [Theory]
    [InlineData("setup-3-unit")]
    [InlineData("setup-4-bar")]
    [InlineData("setup-5-plates")]
    [InlineData("setup-6-other-kit")]
    [InlineData("setup-7-training-days")]
    [InlineData("setup-8-safety")]
    public void The_cursor_stands_on_the_marked_line_even_on_the_smallest_page(string name)
    {
        var page = Drawn(name, 30, 8);
        page.Text.Split('\n')[page.CursorRow].Should().StartWith(">");
    }

    [Theory]
    [InlineData("setup-1-welcome", "plan.")]
    [InlineData("setup-8-safety-advice-1", "which.")]
    [InlineData("setup-9-done", "gym.yaml")]
    [InlineData("stop-signs", "again.")]
    public void On_a_page_too_small_a_text_can_be_read_to_its_end(string name, string lastWord)
    {
        var conversation = SetUpPages.After($"{SetUpPages.ByKeys[name]} {string.Concat(Enumerable.Repeat("- ", 30))}");
        conversation.Draw(new PageSize(30, 8), SetUpPages.Now).Text.Should().Contain(lastWord).And.NotContain("...");
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(4, 3)]
    [InlineData(12, 5)]
    [InlineData(200, 2)]
    public void No_size_is_too_small_to_be_drawn_and_pressed(int columns, int rows)
    {
        foreach (var keys in SetUpPages.ByKeys.Values)
        {
            var conversation = SetUpPages.After(keys + " x");
            conversation.Draw(new PageSize(columns, rows), SetUpPages.Now).Size.Should().Be(new PageSize(columns, rows));
        }
    }

    [Fact]
    public void A_sentence_too_long_for_a_narrow_page_takes_two_rows()
    {
        var conversation = SetUpPages.After("ENTER ENTER x");
        var words = Words(conversation.Draw(new PageSize(30, 8), SetUpPages.Now));
        words.Should().Contain(Notice.DeadKey.Split(' '));
    }

    [Fact]
    public void A_dead_key_says_one_sentence_for_two_seconds_and_changes_nothing_else()
    {
        var conversation = SetUpPages.After("ENTER ENTER");
        var before = At(conversation, Duration.Zero).Text;

        conversation.Press("x", SetUpPages.Now);

        At(conversation, Duration.FromSeconds(1.9)).Text.Should().Contain(Notice.DeadKey);
        At(conversation, Duration.FromSeconds(2)).Text.Should().Be(before);
    }

    private static Page At(IConversation conversation, Duration later) =>
        conversation.Draw(new PageSize(80, 24), SetUpPages.Now + later);

    private static Page Drawn(string name, int columns, int rows) =>
        SetUpPages.After(SetUpPages.ByKeys[name]).Draw(new PageSize(columns, rows), SetUpPages.Now);

    private static IEnumerable<string> Words(Page page) =>
        page.Text.Split([' ', '\n', '─'], StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal);
}
