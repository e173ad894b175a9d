namespace RackSide.Pages.Tests;

public class ExpectedTests
{
    [Fact]
    public void Equal_texts_do_not_differ() =>
        Expected.Differences("one\r\ntwo\n", "one\ntwo\n").Should().BeEmpty();

    [Fact]
    public void A_changed_line_is_told_with_its_row() =>
        Expected.Differences("one\ntwo\n", "one\nthree\n").Should().Be("\n2: - two\n2: + three");

    [Fact]
    public void A_missing_line_is_told_too() =>
        Expected.Differences("one\n", "one\ntwo").Should().Contain("2: + two");

    [Fact]
    public void Keys_are_words_or_letters() => Keys.Parse("12 ENTER *").Should().Equal(
        KeyPress.Of('1'), KeyPress.Of('2'), KeyPress.Enter, KeyPress.Of('*'));

    [Fact]
    public void A_glyph_that_a_console_font_lacks_is_found()
    {
        var canvas = new Canvas(new PageSize(10, 3));
        canvas.Write(0, 0, "a─█▄é");
        SafeGlyphs.Unsafe(canvas.Done()).Should().Equal('▄', 'é');
    }
}
