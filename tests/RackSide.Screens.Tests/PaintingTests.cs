using NodaTime;
using RackSide.Pages;
using RackSide.Pages.Settings;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;

namespace RackSide.Screens.Tests;

public sealed class PaintingTests
{
    private static readonly Instant Any = Instant.FromUtc(2026, 11, 25, 18, 0);

    [Theory]
    [InlineData(80, 24)]
    [InlineData(50, 15)]
    [InlineData(120, 40)]
    [InlineData(30, 8)]
    public void The_whole_terminal_shows_the_page_and_nothing_else(int columns, int rows)
    {
        var conversation = new Scripted();
        using var screen = new Headless(conversation, columns, rows);

        var page = conversation.Draw(new PageSize(columns, rows), Any);

        screen.Text.Should().Be(page.Text);
        screen.Text.Should().Contain($"{columns}x{rows}").And.EndWith("████\n");
        screen.DirtyCells.Should().Be(0);
    }

    [Fact]
    public void A_page_of_another_size_is_drawn_when_the_window_changes()
    {
        using var screen = new Headless(new Scripted());

        screen.Resize(50, 15);
        screen.Text.Should().Contain("50x15").And.NotContain("80x24");
        screen.LastSent.Should().Contain("SCRIPTED", "the terminal must be sent all of it again").And.Contain("50x15");

        screen.Resize(120, 40);
        screen.Text.Split('\n').Should().HaveCount(41);
        screen.Text.Should().Contain("120x40");
    }

    [Fact]
    public void Only_cells_that_differ_are_sent()
    {
        using var screen = new Headless(new Scripted());

        screen.Press(Key.D5);

        // Hide, go to the one new cell, its ink, its glyph; put the cursor back where the page wants it and show it.
        screen.LastSent.Should().EndWith("\e[?25l\e[4;8H\e[0m5\e[0m\e[4;8H\e[?25h");
    }

    [Fact]
    public void A_cell_that_differs_in_its_look_alone_is_sent()
    {
        var brush = new PageBrush(() => new Appearance());
        var buffer = new Terminal.Gui.Drivers.OutputBufferImpl();
        buffer.SetSize(3, 1);
        brush.Paint(Row("abc", Look.Plain), buffer);

        brush.Paint(Row("abc", Look.Bold), buffer).Should().Be("\e[?25l\e[1;1H\e[0;1mabc\e[0m\e[1;1H\e[?25h");
        brush.Paint(Row("abc", Look.Bold), buffer).Should().BeEmpty();
    }

    [Fact]
    public void A_cursor_that_moves_alone_sends_its_move_alone()
    {
        var brush = new PageBrush(() => new Appearance());
        var buffer = new Terminal.Gui.Drivers.OutputBufferImpl();
        buffer.SetSize(3, 1);
        brush.Paint(Row("abc", Look.Plain), buffer);

        brush.Paint(Row("abc", Look.Plain, cursor: 2), buffer).Should().Be("\e[1;3H");
    }

    [Fact]
    public void What_the_library_cleared_is_sent_again_though_the_page_is_the_same()
    {
        using var screen = new Headless(new Scripted());

        screen.App.ClearScreenNextIteration = true;
        screen.Turn();

        screen.LastSent.Should().Contain("SCRIPTED");
        screen.DirtyCells.Should().Be(0);
    }

    [Fact]
    public void A_control_character_never_reaches_the_terminal()
    {
        var buffer = new Terminal.Gui.Drivers.OutputBufferImpl();
        buffer.SetSize(3, 1);

        new PageBrush(() => new Appearance()).Paint(Row("a\u001bb", Look.Plain), buffer).Should().Contain("a?b");
    }

    [Fact]
    public void Plain_leaves_the_terminal_its_own_colours()
    {
        using var screen = new Headless(new Scripted());

        var plain = screen.App.Driver!.Contents![3, 2].Attribute!.Value;

        plain.Foreground.Should().Be(Color.None);
        plain.Background.Should().Be(Color.None);
        plain.Style.Should().Be(TextStyle.None);
    }

    // SGR parameters: ECMA-48 8.3.117 (0 reset, 1 bold, 7 negative image); 93 and 96 are the bright hues that xterm's
    // control sequences document (ctlseqs, "aixterm" 16 colours). From memory.
    [Theory]
    [InlineData(Look.Plain, "\e[0m", "\e[0m", "\e[0;97;40m")]
    [InlineData(Look.Bold, "\e[0;1m", "\e[0;1m", "\e[0;1;97;40m")]
    [InlineData(Look.Reverse, "\e[0;7m", "\e[0;7m", "\e[0;7;97;40m")]
    [InlineData(Look.Now, "\e[0;93m", "\e[0m", "\e[0;97;40m")]
    [InlineData(Look.Next, "\e[0;96m", "\e[0m", "\e[0;97;40m")]
    [InlineData(Look.DiscRed, "\e[0;91m", "\e[0m", "\e[0;97;40m")]
    [InlineData(Look.DiscBlue, "\e[0;94m", "\e[0m", "\e[0;97;40m")]
    [InlineData(Look.DiscYellow, "\e[0;93m", "\e[0m", "\e[0;97;40m")]
    [InlineData(Look.DiscGreen, "\e[0;92m", "\e[0m", "\e[0;97;40m")]
    [InlineData(Look.Now | Look.Bold | Look.Reverse, "\e[0;1;7;93m", "\e[0;1;7m", "\e[0;7;97;40m")]
    public void A_look_is_drawn_with_these_codes(Look look, string inHues, string inGrey, string inContrast)
    {
        new Inks(Tint.Hues).Code(look).Should().Be(inHues);
        new Inks(Tint.Grey).Code(look).Should().Be(inGrey);
        new Inks(Tint.Contrast).Code(look).Should().Be(inContrast);
    }

    private static Page Row(string text, Look look, int cursor = 0)
    {
        var canvas = new Canvas(new PageSize(text.Length, 1));
        canvas.Write(0, 0, text, look);
        canvas.Cursor(cursor, 0);
        return canvas.Done();
    }
}
