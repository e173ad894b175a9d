using RackSide.Pages;
using Terminal.Gui.Input;

namespace RackSide.Screens.Tests;

public sealed class ConversingTests
{
    private static readonly TimeSpan Second = TimeSpan.FromSeconds(1);

    [Fact]
    public void Keys_reach_the_conversation_in_order()
    {
        var conversation = new Scripted();
        using var screen = new Headless(conversation);

        screen.Press(new Key('6'), new Key('2'), new Key(','), new Key('5'), Key.Enter, Key.Tab, Key.CursorUp, Key.F6);

        conversation.Keys.Should().Equal(
            KeyPress.Of('6'), KeyPress.Of('2'), KeyPress.Of(','), KeyPress.Of('5'), KeyPress.Enter,
            new KeyPress(KeyCode.Tab), new KeyPress(KeyCode.Up));
        screen.Text.Should().Contain("keys 6 2 , 5 Enter Tab Up");
    }

    [Fact]
    public void Esc_is_a_key_like_any_other()
    {
        var conversation = new Scripted();
        using var screen = new Headless(conversation);

        screen.Press(Key.Esc);

        // The library waits 50 ms before it takes an Esc for a key and not for the beginning of a longer code.
        screen.Advance(Second);
        screen.Press(new Key('1'));

        screen.Closing.Should().BeFalse();
        conversation.Keys.Should().ContainInOrder(KeyPress.Escape, KeyPress.Of('1'));
    }

    [Fact]
    public void A_tick_that_changes_the_page_is_painted()
    {
        using var screen = new Headless(new Scripted());

        screen.Advance(3 * Second);

        screen.Text.Should().Contain("seconds 2");
    }

    [Fact]
    public void Ticks_come_ten_times_a_second_and_those_that_change_nothing_send_nothing()
    {
        var conversation = new Scripted();
        using var screen = new Headless(conversation);
        screen.Advance(Second + TimeSpan.FromMilliseconds(200));
        screen.Text.Should().Contain("seconds 1");
        var (sent, ticks) = (screen.LastSent, conversation.Ticks);

        screen.Advance(TimeSpan.FromMilliseconds(500));

        conversation.Ticks.Should().Be(ticks + 5);
        screen.LastSent.Should().Be(sent);
    }

    [Fact]
    public void The_screen_closes_when_the_conversation_has_ended()
    {
        using var screen = new Headless(new Scripted());

        screen.Press(new Key('q'));
        screen.Turn();

        screen.Closing.Should().BeTrue();
        screen.Loop.End.Should().Be(ScreenEnd.Finished);
    }

    [Fact]
    public void A_conversation_that_has_nothing_to_show_closes_at_once()
    {
        using var screen = new Headless(new Scripted { Ended = true });

        screen.Closing.Should().BeTrue();
    }

    [Fact]
    public void Ctrl_C_leaves_and_is_told_apart()
    {
        var conversation = new Scripted();
        using var screen = new Headless(conversation);

        screen.Press(Key.C.WithCtrl);
        screen.Turn();

        screen.Closing.Should().BeTrue();
        screen.Loop.End.Should().Be(ScreenEnd.Interrupted);
        new ScreenOutcome(screen.Loop.End).ExitCode.Should().Be(130);
        conversation.Keys.Should().BeEmpty();
    }

    [Fact]
    public void A_wake_from_another_thread_is_painted()
    {
        var conversation = new Scripted();
        using var screen = new Headless(conversation);
        conversation.Note = "written";
        screen.Turn();
        screen.Text.Should().NotContain("written");

        var other = new Thread(() => conversation.Wake!());
        other.Start();
        other.Join();
        screen.Turn();

        screen.Text.Should().Contain("written");
    }

    [Fact]
    public void An_exception_in_the_conversation_is_not_swallowed()
    {
        using var screen = new Headless(new Scripted());

        var press = () => screen.Press(new Key('!'));

        press.Should().Throw<InvalidOperationException>().WithMessage("broken");
    }

    [Theory]
    [InlineData(Bell.None, true, 0, 0)]
    [InlineData(Bell.Once, true, 1, 1)]
    [InlineData(Bell.Twice, true, 1, 2)]
    [InlineData(Bell.Twice, false, 0, 0)]
    public void The_bell_rings_as_often_as_asked_and_not_when_silent(Bell bell, bool sound, int atOnce, int inAll)
    {
        var conversation = new Scripted { Rings = bell };
        using var screen = new Headless(conversation, options: new ScreenOptions { Sound = sound });

        screen.Press(new Key('1'));
        var first = screen.LastSent.Count(character => character == '\a');
        screen.Advance(Second);

        first.Should().Be(atOnce);
        screen.LastSent.Count(character => character == '\a').Should().Be(inAll);
    }
}
