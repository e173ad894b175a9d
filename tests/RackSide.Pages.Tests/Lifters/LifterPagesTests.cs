using NodaTime;
using RackSide.Pages.Lifters;

namespace RackSide.Pages.Tests.Lifters;

public class LifterPagesTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 26, 18, 0);

    private static readonly WhoLine[] Tollbooth =
    [
        new("Ottoline Marsh", "Strength day"), new("Bram Okafor-Lind", "left open, Thu 26 Nov"), new("Juno Petrov", "next Fri 27 Nov"),
    ];

    public static TheoryData<string, string, int, int> Pages
    {
        get
        {
            var data = new TheoryData<string, string, int, int>();
            foreach (var (name, keys) in new[]
            {
                ("who", ""), ("who-nine", "+ - - -"), ("who-told", "HOME"), ("household", "-"), ("pin", "12"), ("pin-wait", "1111 1111 1111"),
                ("pin-new", "12"), ("pin-again", "1234 12"), ("lifter-name", "* + + + * -"), ("lifter", "+ - -"), ("shut-down", ""),
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
    [InlineData("2", 1)]
    [InlineData("ENTER", 0)]
    [InlineData("- - ENTER", 2)]
    [InlineData("DOWN UP ENTER", 0)]
    [InlineData("9 8 7 . 0 ESC 3", 2)]
    public void A_name_is_taken_by_its_digit_or_by_ENTER(string keys, int index)
    {
        var who = new WhoConversation("Thu 26 Nov", Tollbooth, "");
        who.Press(keys, Now);
        who.Choice.Should().Be(new WhoChoice.Trains(index));
    }

    [Theory]
    [InlineData("HOME")]
    [InlineData("END")]
    [InlineData("INS")]
    [InlineData("PGDN")]
    [InlineData("LEFT")]
    public void A_pad_whose_NumLock_is_off_is_told_so(string key)
    {
        var who = new WhoConversation("Thu 26 Nov", Tollbooth, "");
        who.Press(key, Now);
        Shows(who, Now).Should().Contain("NumLock is off");
        who.Ended.Should().BeFalse();
    }

    [Fact]
    public void The_fourth_digit_checks_the_PIN_and_no_page_shows_it()
    {
        var asked = new List<string>();
        var pin = new PinConversation("Bram", typed => { asked.Add(typed); return typed == "2580"; }, default);

        pin.Press("258", Now);
        asked.Should().BeEmpty();
        Shows(pin, Now).Should().Contain("***").And.NotContain("258");
        pin.Press("1", Now);
        (pin.Ended, pin.Brake.Misses).Should().Be((false, 1));
        pin.Press("25 . . 2580", Now);

        asked.Should().Equal("2581", "2580");
        (pin.Right, pin.Brake).Should().Be((true, default(GuessBrake)));
    }

    [Fact]
    public void Guessing_grows_slower_and_a_wait_takes_no_PIN_at_all()
    {
        var tried = 0;
        var pin = new PinConversation("Bram", typed => { tried++; return typed == "2580"; }, default);
        pin.Press("0000 0001 0002", Now);
        tried.Should().Be(3);
        Shows(pin, Now).Should().Contain("0:10");

        pin.Press("2580", Now + Duration.FromSeconds(9));
        (tried, pin.Right).Should().Be((3, false), "not even the right one");

        var (brake, now) = (pin.Brake, Now);
        List<int> waits = [];
        for (var miss = 4; miss <= 12; miss++)
        {
            now += brake.Left(now);
            brake = brake.Missed(now);
            waits.Add((int)brake.Left(now).TotalSeconds);
        }

        waits.Should().Equal(20, 40, 80, 160, 320, 600, 600, 600, 600);
        pin.Press("2580", Now + Duration.FromSeconds(10));
        pin.Right.Should().BeTrue();
    }

    [Theory]
    [InlineData("1234 1234", "1234")]
    [InlineData("1234 1243 1234 1234", "1234")]
    [InlineData("12 ENTER . . ENTER", "")]
    [InlineData("ENTER", "")]
    [InlineData("1234 ENTER 1234", "1234")]
    [InlineData("1234 /", null)]
    public void A_new_PIN_is_typed_twice_and_ENTER_alone_is_none(string keys, string? pin)
    {
        var chosen = new NewPinConversation("Bram", had: true);
        chosen.Press(keys, Now);
        chosen.Pin.Should().Be(pin);
        chosen.Ended.Should().BeTrue();
    }

    [Theory]
    [InlineData("Juno ENTER", "Juno")]
    [InlineData("+ + * * + + ENTER", "Bac")]
    [InlineData("* * - * . ENTER", "A'")]
    [InlineData("Anne-Marie ENTER", "Anne-Marie")]
    [InlineData("* SPACE * + ENTER", "A B")]
    [InlineData("7 Juno ENTER", "Juno")]
    public void A_name_is_typed_or_turned_on_the_pad(string keys, string name)
    {
        var naming = new NameConversation("", []);
        naming.Press(keys, Now);
        naming.Name.Should().Be(name);
    }

    [Fact]
    public void Two_of_one_name_are_refused_and_so_is_none()
    {
        var naming = new NameConversation("Bram", ["Ottoline"]);
        naming.Press("BACK BACK BACK BACK ENTER", Now);
        Shows(naming, Now).Should().Contain("at least one letter");
        naming.Press("ottoline ENTER", Now);
        Shows(naming, Now).Should().Contain("Ottoline trains here already");
        naming.Press("/", Now);
        (naming.Left, naming.Name).Should().Be((true, null));
    }

    [Fact]
    public void Shutting_down_takes_more_than_ENTER_by_mistake()
    {
        var asked = new ShutDownConversation();
        asked.Press("ENTER", Now);
        asked.ShutDown.Should().BeFalse();

        var meant = new ShutDownConversation();
        meant.Press("1", Now);
        meant.ShutDown.Should().BeTrue();
    }

    private static string Shows(IConversation conversation, Instant now) => conversation.Draw(new PageSize(80, 24), now).Text;

    private static IConversation Of(string name) => name switch
    {
        "who" => new WhoConversation("Thu 26 Nov", Tollbooth, ""),
        "who-nine" => new WhoConversation("Thu 26 Nov", [.. Enumerable.Range(1, 9).Select(n => new WhoLine($"Lifter {(char)('A' + n - 1)} of the Tollbooth"[..19], "next Fri 27 Nov"))], ""),
        "who-told" => new WhoConversation("Thu 26 Nov", Tollbooth, "NumLock is off and cannot be switched on from here: press Num on the pad."),
        "household" => new HouseholdConversation([HouseholdChoice.Join, HouseholdChoice.Change, HouseholdChoice.Two, HouseholdChoice.Stick, HouseholdChoice.ShutDown]),
        "pin" or "pin-wait" => new PinConversation("Bram Okafor-Lind", _ => false, default),
        "pin-new" or "pin-again" => new NewPinConversation("Bram Okafor-Lind", had: true),
        "lifter-name" => new NameConversation("Bram Okafor", []),
        "lifter" => new LifterConversation(new LifterTexts("Bram Okafor-Lind", "pounds", Pin: true, "the gym's own")),
        "shut-down" => new ShutDownConversation(),
        _ => throw new ArgumentException(name),
    };
}
