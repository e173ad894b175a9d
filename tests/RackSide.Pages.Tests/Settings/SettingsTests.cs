using NodaTime;
using RackSide.Pages.Rack;
using RackSide.Pages.Settings;
using RackSide.Pages.Tests.Rack;

namespace RackSide.Pages.Tests.Settings;

public class SettingsTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 25, 18, 0);
    private readonly List<RackSettings> kept = [];

    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    [InlineData(30, 8)]
    public void The_settings_and_the_keys_are_as_expected(int columns, int rows)
    {
        Expected.Match(After("").Draw(new PageSize(columns, rows), Now), "settings");
        Expected.Match(After("6").Draw(new PageSize(columns, rows), Now), "settings-keys");
        Expected.Match(After("6 - ENTER").Draw(new PageSize(columns, rows), Now), "settings-key-waits");
    }

    [Theory]
    [InlineData("1", Tint.Grey)]
    [InlineData("1 1", Tint.Contrast)]
    [InlineData("1 1 1", Tint.Hues)]
    [InlineData("ENTER", Tint.Grey)]
    public void Colours_go_round_and_each_is_kept(string keys, Tint tint)
    {
        After(keys);

        kept[^1].Screen.Tint.Should().Be(tint);
    }

    [Fact]
    public void Each_line_changes_its_own_setting_and_back()
    {
        After("2 3 4 5");
        kept[^1].Should().BeEquivalentTo(new { Sound = false, Screen = new { SevenBit = true, Big = true, Flash = false } });

        After("2 2 2 3 3 4 4 5 5");
        kept[^1].Should().BeEquivalentTo(new { Sound = true, Screen = new { SevenBit = (bool?)null, Big = false, Flash = true } });
    }

    [Fact]
    public void A_key_is_given_by_pressing_it_and_taken_back_by_the_star()
    {
        After($"6 {Down(Verb.Undo)} ENTER r");
        kept[^1].Screen.Keys.Others(Verb.Undo).Should().Equal(KeyPress.Of('r'));

        After($"6 {Down(Verb.Undo)} ENTER r ENTER *");
        kept[^1].Screen.Keys.Changed.Should().BeEmpty();
    }

    [Fact]
    public void A_key_that_is_taken_changes_nothing_and_says_by_what()
    {
        var page = After($"6 {Down(Verb.Undo)} ENTER q").Draw(new PageSize(80, 24), Now);

        kept.Should().BeEmpty();
        page.Text.Should().Contain("Q would mean both undo and leave; take it from one of them.");
    }

    [Theory]
    [InlineData("/")]
    [InlineData("7")]
    [InlineData("6 / ESC")]
    public void It_is_left_by_a_key(string keys) => After(keys).Ended.Should().BeTrue();

    [Fact]
    public void What_cannot_be_kept_is_told_and_stays_as_it_was()
    {
        var settings = new SettingsConversation(new RackSettings(new ScreenSettings(), true), _ => "Not kept: disk full");
        settings.Press("3", Now);

        settings.Draw(new PageSize(80, 24), Now).Text.Should().Contain("Not kept: disk full").And.Contain("whole");
    }

    [Theory]
    [InlineData("lift-third-set", 50, 15)]
    [InlineData("lift-third-set", 80, 24)]
    [InlineData("lift-third-set", 120, 40)]
    [InlineData("rest", 50, 15)]
    [InlineData("rest", 80, 24)]
    [InlineData("hold-running", 80, 24)]
    [InlineData("lift-doubt", 50, 15)]
    public void The_large_page_is_as_expected(string name, int columns, int rows)
    {
        var rack = RackPages.At(name);
        var page = SessionPages.Draw(rack.Session, null, new PageSize(columns, rows) { Big = true }, rack.Now);

        Expected.Match(page, $"big-{name}");
        SafeGlyphs.Unsafe(page).Should().BeEmpty();
    }

    // The bar over the whole width: second 0 on, 1 off, from 2 on until the late bell; steady where flashing is off.
    // Standard S16 of docs/screen.md.
    [Theory]
    [InlineData(0.5, true, true)]
    [InlineData(1.5, false, true)]
    [InlineData(2.5, true, true)]
    [InlineData(20, true, true)]
    [InlineData(31, false, false)]
    public void The_end_of_a_rest_is_seen_without_a_sound(double after, bool flashing, bool steady)
    {
        var rack = RackPages.At("rest").RestOut();
        var ended = ((Training.Sessions.Lifting)rack.Phase).Rested!.Ends!.Value;
        var then = rack.Session with { Now = ended + Duration.FromSeconds(after) };

        Whole(SessionPages.Draw(then, null, new PageSize(80, 24), then.Now)).Should().Be(flashing);
        Whole(SessionPages.Draw(then, null, new PageSize(80, 24) { Steady = true }, then.Now)).Should().Be(steady);
    }

    // Standard S16 of docs/screen.md.
    [Fact]
    public void The_last_ten_seconds_of_a_rest_are_seen_without_a_sound()
    {
        var rack = RackPages.At("rest").Wait(100);
        var page = SessionPages.Draw(rack.Session, null, new PageSize(80, 24), rack.Now);

        page.Text.Should().Contain(" GET READY ");
        Whole(page).Should().BeTrue();
    }

    private static bool Whole(Page page) => Enumerable.Range(0, page.Size.Columns).All(column => page[column, 2].Look.HasFlag(Look.Reverse));

    private static string Down(Verb verb) => string.Join(' ', Enumerable.Repeat("-", KeyLayout.Verbs.ToList().IndexOf(verb)));

    private SettingsConversation After(string keys)
    {
        kept.Clear();
        var settings = new SettingsConversation(new RackSettings(new ScreenSettings(), true), wished =>
        {
            kept.Add(wished);
            return null;
        });
        settings.Press(keys, Now);
        return settings;
    }
}
