using NodaTime;
using NodaTime.Testing;
using RackSide.Arrivals;
using RackSide.Pages;
using RackSide.Pages.Settings;
using RackSide.Places;
using RackSide.Tests.Commands;
using RackSide.Visits;

namespace RackSide.Tests.Arrivals;

/// <summary>A stay that is shown while its gym is being opened; the test says when that is done.</summary>
[Collection(nameof(Tollbooth))]
public sealed class ArrivalTests : IDisposable
{
    private static readonly PageSize Size = new(80, 24);
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 11, 18, 0);
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(30);
    private readonly PassingFolder home;
    private readonly string today;
    private readonly ManualResetEventSlim mayOpen = new();
    private readonly ManualResetEventSlim woken = new();

    public ArrivalTests(Tollbooth gym)
    {
        home = gym.Copy();
        using var open = Gym();
        using var visit = new RackVisit(open, null);
        today = visit.Draw(Size, Now).Text;
    }

    public void Dispose()
    {
        home.Dispose();
        mayOpen.Dispose();
        woken.Dispose();
    }

    [Fact]
    public void The_kept_page_stands_until_the_gym_is_open_and_keys_are_answered_then()
    {
        using var arrival = Arrive(Kept(today));
        Shows(arrival).Should().Be(today);
        arrival.Press(KeyPress.Of('!'), Now);
        Shows(arrival).Should().Be(today, "nothing is answered that the logbook has not said");

        Open(arrival);

        Shows(arrival).Should().NotBe(today, "the stop signs lie over it");
    }

    [Fact]
    public void Keys_pressed_on_a_page_that_proves_another_are_dropped()
    {
        using var arrival = Arrive(Kept("STRENGTH DAY  of last week"));
        Shows(arrival).Should().StartWith("STRENGTH DAY  of last week");
        arrival.Press(KeyPress.Of('!'), Now);

        Open(arrival);

        Shows(arrival).Should().Be(today);
        arrival.Press(KeyPress.Of('!'), Now);
        Shows(arrival).Should().NotBe(today);
    }

    [Fact]
    public void A_window_of_another_size_is_blank_until_then()
    {
        using var arrival = Arrive(Kept(today));
        arrival.Draw(new PageSize(50, 15), Now).Text.Trim().Should().BeEmpty();

        Open(arrival);

        arrival.Draw(new PageSize(50, 15), Now).Text.Should().Contain("Wed 11 Nov");
    }

    [Fact]
    public void A_gym_that_cannot_be_opened_ends_the_screen_and_says_why()
    {
        using var arrival = new Arrival(Kept(today), new FakeClock(Now), () =>
        {
            mayOpen.Wait(Long);
            throw new Refusal(ExitCode.Busy, "the logbook is open elsewhere");
        });
        arrival.Wake = woken.Set;
        arrival.Ended.Should().BeFalse();

        Open(arrival);

        arrival.Ended.Should().BeTrue();
        var act = () => arrival.Stay;
        act.Should().Throw<Refusal>().WithMessage("the logbook is open elsewhere");
    }

    [Fact]
    public void With_no_page_kept_the_gym_is_open_before_anything_is_shown()
    {
        mayOpen.Set();
        using var arrival = Arrive(kept: null);

        Shows(arrival).Should().Be(today);
        var act = () => new Arrival(null, new FakeClock(Now), () => throw new Refusal(ExitCode.Usage, "no such lifter"));
        act.Should().Throw<Refusal>();
    }

    private static KeptPage Kept(string text)
    {
        var cells = Enumerable.Repeat(Cell.Blank, Size.Columns * Size.Rows).ToArray();
        foreach (var (line, row) in text.TrimEnd('\n').Split('\n').Select((line, row) => (line, row)))
        {
            foreach (var (glyph, column) in line.Select((glyph, column) => (glyph, column)))
            {
                cells[(row * Size.Columns) + column] = new Cell(glyph, Look.Plain);
            }
        }

        return new KeptPage(Page.Of(Size, cells, 0, 0), new Appearance(), Now, Now + Duration.FromDays(1));
    }

    private static string Shows(Arrival arrival) => arrival.Draw(Size, Now).Text;

    private Arrival Arrive(KeptPage? kept) => new(kept, new FakeClock(Now), () =>
    {
        mayOpen.Wait(Long);
        return new Stay(Gym(), gym => new RackVisit(gym, null), sound: false);
    })
    {
        Wake = woken.Set,
    };

    private void Open(Arrival arrival)
    {
        mayOpen.Set();
        woken.Wait(Long).Should().BeTrue();
        arrival.Tick(Now);
    }

    private Gym Gym() => RackSide.Gym.Open(new Folders(home.Path, home.Path, "the test"), null, new FakeClock(Now), abroad: DateTimeZone.Utc);

}
