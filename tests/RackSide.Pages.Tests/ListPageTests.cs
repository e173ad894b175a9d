namespace RackSide.Pages.Tests;

public class ListPageTests
{
    private static readonly ListLine[] Three = [new("row"), new("press", true), new("pulldown", false)];

    [Theory]
    [InlineData("1", 0)]
    [InlineData("3", 2)]
    [InlineData("4", null)]
    [InlineData("0", null)]
    [InlineData("+", 0)]
    [InlineData("UP", 0)]
    [InlineData("-", 2)]
    [InlineData("DOWN", 2)]
    [InlineData("x", null)]
    [InlineData("ENTER", null)]
    public void A_key_leads_from_the_second_of_three_lines_to(string key, int? line) =>
        ListPage.Move(Keys.Parse(key).Single(), 1, 3).Should().Be(line);

    [Theory]
    [InlineData("-", 2)]
    [InlineData("DOWN", 2)]
    public void There_is_no_line_after_the_last(string key, int line) =>
        ListPage.Move(Keys.Parse(key).Single(), 2, 3).Should().Be(line);

    [Theory]
    [InlineData("3", 2)]
    [InlineData("*", 1)]
    [InlineData("+", null)]
    [InlineData("9", null)]
    public void A_key_ticks_from_the_second_of_three_lines(string key, int? line) =>
        ListPage.Tick(Keys.Parse(key).Single(), 1, 3).Should().Be(line);

    [Fact]
    public void The_chosen_line_is_marked_and_boxes_show_their_ticks()
    {
        var rows = new ListPage("EXERCISES", Three, 1).Draw(new PageSize(50, 15)).Text.Split('\n');
        rows.Should().Contain(["  1  row", "> 2  [x] press", "  3  [ ] pulldown"]);
    }

    [Fact]
    public void Values_stand_under_each_other()
    {
        ListLine[] lines = [new("row", Value: "42.5 kg"), new("bench press", Value: "45 kg")];
        var rows = new ListPage("EXERCISES", lines, 0) { Numbered = false }.Draw(new PageSize(50, 15)).Text.Split('\n');
        rows.Should().Contain(["> row           42.5 kg", "  bench press   45 kg"]);
    }

    [Theory]
    [InlineData(0, "line 1")]
    [InlineData(4, "line 5")]
    [InlineData(8, "line 9")]
    public void A_page_too_small_shows_the_lines_about_the_chosen_one(int chosen, string text)
    {
        var lines = Enumerable.Range(1, 9).Select(n => new ListLine($"line {n}")).ToList();
        var page = new ListPage("LINES", lines, chosen).Draw(new PageSize(30, 8));
        page.Text.Split('\n')[page.CursorRow].Should().Be($"> {chosen + 1}  {text}");
    }

    [Fact]
    public void A_word_longer_than_a_line_is_cut_up_and_not_off()
    {
        var page = new TextPage("TEXT", [new string('a', 70) + "z"]).Draw(new PageSize(30, 8));
        string.Concat(page.Text.Split('\n')[1..4]).Should().Be(new string('a', 70) + "z");
    }

    [Theory]
    [InlineData("", "5", "5")]
    [InlineData("5", ".", "5.")]
    [InlineData("5", ",", "5,")]
    [InlineData("52", "BACK", "5")]
    [InlineData("", "BACK", null)]
    [InlineData("12345678", "9", null)]
    [InlineData("5", "x", null)]
    [InlineData("5", "-", null)]
    public void A_number_is_typed_key_by_key(string typed, string key, string? then) =>
        EntryPage.TypeNumber(typed, Keys.Parse(key).Single()).Should().Be(then);
}
