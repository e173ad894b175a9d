using NodaTime;
using RackSide.Pages.Rack;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Tests.Rack;

/// <summary>Standards of docs/screen.md that are reckoned on pages alone.</summary>
public class ScreenStandardsTests
{
    /// <summary>Minutes of arc: the least, and what is preferred for reading, of ISO 9241-3 and of NUREG-0700 Rev. 2, 1.3.1-4.</summary>
    private const double Preferred = 22;

    public static TheoryData<string> AllNames => [.. RackPages.AtAllSizes.Select(row => (string)((object[])row)[0]).Distinct()];

    // S3: one key, Esc or / again, from any page over a session to the set in hand or the clock that runs.
    [Theory]
    [MemberData(nameof(AllNames))]
    public void One_key_leads_from_any_page_back_to_the_set_in_hand(string name)
    {
        foreach (var key in new[] { KeyPress.Of('/'), KeyPress.Escape })
        {
            var rack = RackPages.At(name);
            if (rack.Phase is not (Choosing or Reading))
            {
                return;
            }

            rack.Wait(1).Send(KeyTable.EventOf(key, rack.Now)!);

            rack.Phase.Should().NotBeOfType<Choosing>().And.NotBeOfType<Reading>();
        }
    }

    // S4: what the pad sends with NumLock off. What needs a digit to be typed needs NumLock; nothing else does.
    [Theory]
    [InlineData(KeyCode.Enter, Verb.Accept)]
    [InlineData(KeyCode.Insert, Verb.Digit)]
    [InlineData(KeyCode.Delete, Verb.Point)]
    [InlineData(KeyCode.Up, Verb.More)]
    [InlineData(KeyCode.Down, Verb.Fewer)]
    [InlineData(KeyCode.Home, Verb.Today)]
    [InlineData(KeyCode.PageUp, Verb.LookBack)]
    [InlineData(KeyCode.PageDown, Verb.LookAhead)]
    public void With_NumLock_off_the_pad_accepts_pauses_undoes_and_steps(KeyCode key, Verb verb) => KeyTable.VerbOf(new KeyPress(key)).Should().Be(verb);

    // S13 and what can be reckoned of S14: how large load, reps and clock are from the bar, two metres away.
    [Theory]
    [InlineData("lift", 50, 15, false, 7, 800, 480)]
    [InlineData("lift-heavy", 50, 15, false, 7, 800, 480)]
    [InlineData("rest", 50, 15, false, 7, 800, 480)]
    [InlineData("lift", 50, 15, true, 7, 800, 480)]
    [InlineData("rest", 50, 15, true, 7, 800, 480)]
    [InlineData("lift", 80, 24, false, 7, 800, 480)]
    [InlineData("lift", 80, 24, false, 13.3, 1920, 1080)]
    [InlineData("rest", 80, 24, false, 13.3, 1920, 1080)]
    [InlineData("lift", 120, 40, false, 15.6, 1920, 1080)]
    [InlineData("rest", 120, 40, false, 15.6, 1920, 1080)]
    public void Digits_are_legible_from_the_bar(string name, int columns, int rows, bool big, double inches, int across, int down)
    {
        var rack = RackPages.At(name);
        var page = SessionPages.Draw(rack.Session, null, new PageSize(columns, rows) { Big = big }, rack.Now);
        var high = inches * 25.4 * down / Math.Sqrt((across * across) + (down * down)) / rows * DigitRows(page);

        MinutesOfArc(high, metres: 2).Should().BeGreaterThanOrEqualTo(Preferred);
    }

    // The formula of NUREG-0700 Rev. 2, 1.3.1-4, height = 6.283 D MA / 21600, and its own least and preferred heights at 2 m.
    [Theory]
    [InlineData(9.3, 16)]
    [InlineData(12.8, 22)]
    public void The_reckoning_is_that_of_the_handbook(double millimetres, double minutes)
    {
        MinutesOfArc(millimetres, metres: 2).Should().BeApproximately(minutes, 0.05);
        (6.283 * 2000 * minutes / 21600).Should().BeApproximately(millimetres, 0.05);
    }

    // Width to height of 0.5:1 to 1:1 (ISO 9241-3), in cells twice as high as wide.
    [Theory]
    [InlineData("lift-third-set", 50, 15)]
    [InlineData("rest", 50, 15)]
    [InlineData("lift-third-set", 80, 24)]
    [InlineData("rest", 120, 40)]
    public void Large_digits_are_no_poles_and_no_planks(string name, int columns, int rows)
    {
        var rack = RackPages.At(name);
        var page = SessionPages.Draw(rack.Session, null, new PageSize(columns, rows) { Big = true }, rack.Now);
        var wide = page.Text.Split('\n').Where(l => l.Contains('█')).SelectMany(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Max(run => run.Length);

        (wide / (2.0 * DigitRows(page))).Should().BeInRange(0.5, 1);
        (DigitRows(page) * 100.0 / rows).Should().BeGreaterThanOrEqualTo(35);
    }

    // S17: 200x60 is whole too, and 30x8 still shows the clock and the next set.
    [Theory]
    [MemberData(nameof(AllNames))]
    public void A_very_large_window_is_drawn_in_safe_glyphs(string name) => SafeGlyphs.Unsafe(RackPages.Drawn(name, 200, 60)).Should().BeEmpty();

    [Fact]
    public void The_smallest_window_shows_the_clock_and_the_next_set() =>
        RackPages.Drawn("rest", 30, 8).Text.Should().Contain("1:47").And.Contain("SQUAT").And.Contain("67.5 kg x 5").And.Contain("ENTER");

    // S25: the week is one screen, with what comes of it in words.
    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    public void The_week_is_one_screen_with_the_decision_in_words(int columns, int rows)
    {
        var page = RackPages.Drawn("finish", columns, rows).Text;

        page.Should().Contain("up").And.NotContain("read on");
        page.Split('\n').Should().HaveCountLessThanOrEqualTo(rows + 1);
    }

    /// <summary>Rows from the first that has a digit's blocks to the last, where they hang together.</summary>
    private static int DigitRows(Page page) =>
        page.Text.Split('\n').Select((line, row) => (Has: line.Contains('█') && !line.Contains('░') && !line.Contains('▒') && !line.Contains('┤'), row))
            .SkipWhile(l => !l.Has).TakeWhile(l => l.Has).Count();

    private static double MinutesOfArc(double millimetres, double metres) => 2 * Math.Atan(millimetres / 2 / (metres * 1000)) * 180 / Math.PI * 60;
}
