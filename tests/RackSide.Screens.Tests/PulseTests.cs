using Microsoft.Extensions.Time.Testing;
using RackSide.Screens.Waiting;

namespace RackSide.Screens.Tests;

public sealed class PulseTests : IDisposable
{
    private readonly FakeTimeProvider time = new();
    private readonly Stir stir = new();
    private readonly Pulse pulse;

    public PulseTests() => pulse = new Pulse(stir, time);

    public void Dispose() => stir.Dispose();

    [Fact]
    public void Ticks_come_ten_times_a_second_while_something_may_move() => TicksIn(seconds: 1).Should().Be(10);

    [Fact]
    public void Other_work_may_be_done_once_nobody_has_stirred_for_a_while_and_no_tick_is_due_soon()
    {
        pulse.Stirred();
        pulse.Idle.Should().BeFalse();

        time.Advance(TimeSpan.FromSeconds(3));
        pulse.Idle.Should().BeFalse("a tick is due");

        pulse.TakeTick().Should().BeTrue();
        pulse.Idle.Should().BeTrue();

        time.Advance(TimeSpan.FromMilliseconds(950));
        pulse.Idle.Should().BeFalse("the next tick is near");
    }

    [Fact]
    public void Over_a_page_that_stands_still_there_is_one_a_second()
    {
        TicksIn(seconds: 5);

        TicksIn(seconds: 10).Should().Be(10);
    }

    // Standard S8 of docs/screen.md.
    [Fact]
    public void A_clock_in_seconds_takes_four_ticks_a_second_at_most_and_is_seen_within_a_twentieth()
    {
        var late = new List<int>();
        Run(20_000, at => at / 1000, late.Add);
        late.Clear();

        var ticks = Run(10_000, at => at / 1000, late.Add);

        ticks.Should().BeLessThanOrEqualTo(40);
        late.Should().HaveCount(10).And.OnlyContain(ms => ms <= 50);
    }

    [Fact]
    public void A_clock_that_begins_at_another_moment_after_a_key_is_not_missed()
    {
        var late = new List<int>();
        Run(10_000, at => at / 1000, late.Add);
        time.Advance(TimeSpan.FromMilliseconds(430));
        pulse.Stirred();
        late.Clear();

        Run(10_100, at => at / 1000, late.Add);

        late.Should().HaveCount(10).And.OnlyContain(ms => ms <= 100);
    }

    [Fact]
    public void A_clock_that_runs_eight_times_as_fast_is_followed_like_anything_that_moves()
    {
        var late = new List<int>();

        Run(5_000, at => at / 125, late.Add);

        late.Should().OnlyContain(ms => ms <= 100);
    }

    [Fact]
    public void Who_stirs_ends_the_sleep_and_makes_it_lively_again()
    {
        TicksIn(seconds: 5);
        stir.Up();

        pulse.Rest();

        TicksIn(seconds: 1).Should().Be(10);
    }

    private int TicksIn(int seconds) => Run(seconds * 1000, _ => 0, _ => { });

    // Steps of a millisecond; what the page shows is a number that changes by itself, seen only on a tick.
    private int Run(int milliseconds, Func<int, int> shows, Action<int> seenLate)
    {
        var (ticks, seen) = (0, shows(0));
        for (var at = 1; at <= milliseconds; at++)
        {
            time.Advance(TimeSpan.FromMilliseconds(1));
            if (!pulse.TakeTick())
            {
                continue;
            }

            ticks++;
            if (shows(at) is var now && now != seen)
            {
                seen = now;
                seenLate(Enumerable.Range(0, at).TakeWhile(back => shows(at - back) == now).Count() - 1);
                pulse.Moved();
            }
        }

        return ticks;
    }
}
