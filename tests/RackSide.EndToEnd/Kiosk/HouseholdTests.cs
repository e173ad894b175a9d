using RackSide.EndToEnd.Driving;
using RackSide.EndToEnd.Sessions;

namespace RackSide.EndToEnd.Kiosk;

/// <summary>The rack of a household on the real program, with the numeric pad alone.</summary>
public sealed class HouseholdTests
{
    [Theory]
    [InlineData(50, 15)]
    [InlineData(120, 40)]
    public async Task Two_join_one_asks_for_a_PIN_and_nothing_leads_out_but_shutting_down(int columns, int rows)
    {
        using var gym = new GymFolder();
        using var rack = Tmux.Start([.. ProgramUnderTest.RackSide, "--data", gym.Path, "--kiosk"], new TerminalSetting
        {
            Columns = columns,
            Rows = rows,
            Environment = new Dictionary<string, string> { ["RACKSIDE_CLOCK"] = "2026-11-23T18:00" },
        });

        await rack.WaitFor("page 1 of 9");
        for (var page = 2; page <= 9; page++)
        {
            rack.Press("KPEnter");
            await rack.WaitFor($"page {page} of 9");
        }

        rack.Press("KPEnter");
        await rack.WaitFor("STRENGTH DAY  Mon 23 Nov");
        rack.Press("KP/");
        await rack.WaitFor("WHO TRAINS?");

        rack.Press("KP/", "KP1");
        await rack.WaitFor("page 1 of 5");
        rack.Press("KPEnter", "KP+", "KP*");
        await rack.WaitFor("[Aa");
        rack.Press("KPEnter", "KPEnter", "KPEnter");
        await rack.WaitFor("page 5 of 5");
        rack.Press("KPEnter");
        await rack.WaitFor("STRENGTH DAY  Mon 23 Nov");
        rack.Press("KP/");
        await rack.WaitFor("2  Aa");

        rack.Press("KP/", "KP2", "KP2", "KP3");
        await rack.WaitFor("Four digits:");
        rack.Press("KP2", "KP5", "KP8", "KP0");
        await rack.WaitFor("The same again:");
        rack.Press("KP2", "KP5", "KP8", "KP0");
        await rack.WaitFor("asked for");
        rack.Press("KP/", "KP2");
        await rack.WaitFor("PIN of Aa?");
        rack.Press("KP0", "KP0", "KP0", "KP0");
        await rack.WaitFor("That is not the PIN.");
        rack.Press("KP2", "KP5", "KP8", "KP0");
        await rack.WaitFor("STRENGTH DAY  Mon 23 Nov");
        rack.Press("KP/");
        await rack.WaitFor("WHO TRAINS?");

        rack.Press("C-c", "C-z", "Escape");
        await rack.WaitFor("There is nothing behind this page");
        rack.Press("KP/", "KP4", "KP1");
        (await rack.WaitForEnd()).Should().Be(20);
    }

    [Fact]
    public async Task SIGHUP_ends_it_at_once_with_the_logbook_closed()
    {
        using var gym = new GymFolder();
        using var rack = Tmux.Start([.. ProgramUnderTest.RackSide, "--data", gym.Path, "--kiosk"]);
        await rack.WaitFor("page 1 of 9");

        rack.Signal("HUP");

        (await rack.WaitForEnd(TimeSpan.FromSeconds(5))).Should().Be(129);
        gym.Sessions().Should().BeEmpty("the logbook opens, because nobody holds it");
    }
}
