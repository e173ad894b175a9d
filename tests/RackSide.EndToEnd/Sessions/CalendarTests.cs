using NodaTime;
using RackSide.Training.History;

namespace RackSide.EndToEnd.Sessions;

/// <summary>The calendar, days away, a clock that lies and a day in less time, on the real program from the numeric pad.</summary>
public sealed class CalendarTests
{
    private const string Monday = "2026-11-23T18:00";
    private const string Tuesday = "2026-11-24T18:00";
    private const int Slow = 1;
    private const int Fast = 400;

    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public async Task Days_away_are_told_seen_in_the_calendar_and_taken_back(int columns, int rows)
    {
        using var gym = new GymFolder();
        using var lifter = ScriptedLifter.WalkUp(gym, Monday, Slow, columns, rows);
        await lifter.SetUp();
        await lifter.Sees("ENTER begin");
        lifter.Press("KP*", "KP3");
        await lifter.Sees("DAYS AWAY");
        lifter.Press("KP1");
        await lifter.Sees("The first day away?");
        Type(lifter, "24.11");
        await lifter.Sees("= Tue 24 Nov");
        lifter.Press("KPEnter");
        await lifter.Sees("The last day away?");
        Type(lifter, "6.12");
        await lifter.Sees("= Sun 6 Dec");
        lifter.Press("KPEnter", "KP1");
        await lifter.Sees("take back: Tue 24 Nov to Sun 6 Dec 2026");
        lifter.Press("KP/");
        await lifter.Sees("STRENGTH DAY  Mon 23 Nov");
        lifter.Press("KP*", "KP2");
        (await lifter.Sees("CALENDAR")).Should().Contain("today is Mon 23 Nov").And.Contain("away");
        lifter.Press("KP-", "KP-");
        lifter.Press("KP+");
        await lifter.Sees("Tue 24 Nov: away; away until Sun 6 Dec");
        lifter.Press("KP/");
        await lifter.Sees("ENTER begin");
        lifter.Press("KP*", "KP3", "KP2");
        await lifter.Sees("taken back");
        lifter.Press("KP/", "KP*", "KP2");
        (await lifter.Sees("CALENDAR")).Should().NotContain("away");
        lifter.Press("KP/", "KP/");
        (await lifter.Screen.WaitForEnd()).Should().Be(0);
    }

    [Fact]
    public async Task A_board_that_wakes_in_1970_is_told_the_date_and_dates_the_session_by_it()
    {
        using var gym = new GymFolder();
        using (var first = ScriptedLifter.WalkUp(gym, Monday, Fast))
        {
            await first.SetUp();
            await first.Begin();
            await first.TrainUntil("set 1 written");
            first.Press("KP/", "KP5", "KP3");
            await first.Sees("done, leave");
            await first.Lift();
            first.Press("KPEnter");
            await first.Screen.WaitForEnd();
        }

        // At the clock's own pace, because a sentence stands for two seconds of it.
        using (var slip = ScriptedLifter.WalkUp(gym, "1970-01-01T00:05", 1))
        {
            await slip.Sees("WHAT IS THE DATE?");
            Type(slip, "31.11");
            slip.Press("KPEnter");
            await slip.Sees("is not a day of the calendar");
            slip.Press("KP/");
            await slip.Screen.WaitForEnd();
        }

        using var lifter = ScriptedLifter.WalkUp(gym, "1970-01-01T00:05", Fast);
        await lifter.Sees("WHAT IS THE DATE?");
        Type(lifter, "27.11");
        await lifter.Sees("= Fri 27 Nov");
        lifter.Press("KPEnter");
        await lifter.Sees("STRENGTH DAY  Fri 27 Nov");
        await lifter.Begin();
        await lifter.TrainUntil("set 1 written");
        lifter.Press("KP/", "KP5", "KP3");
        await lifter.Sees("done, leave");
        await lifter.Lift();
        lifter.Press("KPEnter");
        await lifter.Screen.WaitForEnd();

        gym.Sessions().Select(s => s.Date).Should().Equal(new LocalDate(2026, 11, 23), new LocalDate(2026, 11, 27));
        gym.Sessions()[1].Facts.Should().OnlyContain(f => f.At.InUtc().Date == new LocalDate(2026, 11, 27));
    }

    [Fact]
    public async Task A_day_in_35_minutes_is_shown_first_undone_and_then_trained()
    {
        using var gym = new GymFolder();
        using var lifter = ScriptedLifter.WalkUp(gym, Monday, Fast);
        await lifter.SetUp();
        await lifter.Sees("ENTER begin");
        lifter.Press("KP*", "KP1");
        await lifter.Sees("How many minutes have you?");
        Type(lifter, "35");
        lifter.Press("KPEnter");
        await lifter.Sees("no time for");
        lifter.Press("KP*", "KP2");
        await lifter.Screen.WaitFor(s => s.Contains("ENTER begin") && !s.Contains("no time for"), "the whole plan");
        lifter.Press("KP*", "KP1");
        await lifter.Sees("How many minutes have you?");
        Type(lifter, "35");
        lifter.Press("KPEnter");
        await lifter.Sees("no time for");
        await lifter.Begin();
        await lifter.TrainUntil("done, leave");
        lifter.Press("KPEnter");
        (await lifter.Screen.WaitForEnd()).Should().Be(0);

        var session = gym.Sessions().Should().ContainSingle().Which;
        session.LeftOut.Should().Contain("core");
        session.Sets.Count(s => s.Set.Slot == "squat" && s.Set.Kind == SetKind.Working).Should().Be(5);
        session.Sets.Select(s => s.Set.Slot).Should().NotContain("core");
        (session.Facts.Max(f => f.At) - session.Head.Begun).Should().BeLessThan(Duration.FromMinutes(45));
    }

    [Fact]
    public async Task On_a_rest_day_the_calendar_the_days_away_and_the_kit_are_a_digit_away()
    {
        using var gym = new GymFolder();
        using (var first = ScriptedLifter.WalkUp(gym, Tuesday, Slow))
        {
            await first.SetUp();
            await first.Sees("REST DAY");
            first.Press("KP4");
            await first.Sees("CALENDAR");
            first.Press("KP/");
            await first.Sees("REST DAY");
            first.Press("KP5");
            await first.Sees("DAYS AWAY");
            first.Press("KP/");
            await first.Sees("REST DAY");
            first.Press("KP6", "KP2");
            await first.Sees("THIS GYM'S KIT");
            first.Press("KP/");
            await first.Sees("REST DAY");
            first.Press("KP7");
            (await first.Screen.WaitForEnd()).Should().Be(0);
        }
    }

    private static void Type(ScriptedLifter lifter, string text) =>
        lifter.Press([.. text.Select(c => $"KP{c}")]);
}
