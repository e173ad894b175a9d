using CsCheck;
using NodaTime;
using RackSide.Training.Racks;

namespace RackSide.Training.Tests.Racks;

/// <summary>
/// The two rules of a hybrid logical clock (Kulkarni, Demirbas and others, "Logical Physical Clocks", 2014, from memory): it never
/// goes back, and it goes past what it has seen; and where no clock is wrong it is close to the wall clock.
/// </summary>
public class HybridClockTests
{
    private static readonly Gen<Instant> Wall = Gen.Long[-3_000_000_000, 200_000_000_000].Select(Instant.FromUnixTimeSeconds);

    [Fact]
    public void A_count_is_always_past_the_last_whatever_the_wall_clock_says() =>
        Gen.Select(Gen.Long[0, long.MaxValue - 1], Wall).Sample((last, now) => HybridClock.Next(last, now) > last);

    [Fact]
    public void A_count_is_never_behind_the_wall_clock() =>
        Gen.Select(Gen.Long[0, long.MaxValue - 1], Wall).Sample((last, now) => HybridClock.Next(last, now) >= HybridClock.Reading(now));

    [Fact]
    public void An_answer_stands_after_what_it_answers_although_its_clock_is_five_hours_behind()
    {
        var ahead = Instant.FromUtc(2026, 11, 27, 18, 0);
        var seen = HybridClock.Next(0, ahead);

        HybridClock.Next(seen, ahead - Duration.FromHours(5)).Should().Be(seen + 1);
    }

    [Fact]
    public void A_count_tells_its_wall_clock_to_the_millisecond()
    {
        var now = Instant.FromUtc(2026, 11, 27, 18, 0) + Duration.FromMilliseconds(123);

        HybridClock.Wall(HybridClock.Next(7, now)).Should().Be(now);
    }

    [Fact]
    public void A_board_that_wakes_in_1970_only_counts_on() =>
        HybridClock.Next(HybridClock.Reading(Instant.FromUtc(2026, 11, 27, 18, 0)) + 3, NodaConstants.UnixEpoch)
            .Should().Be(HybridClock.Reading(Instant.FromUtc(2026, 11, 27, 18, 0)) + 4);

    [Fact]
    public void A_rack_alone_counts_one_by_one() =>
        Gen.Select(Gen.Long[1, 1_000_000], Wall).Sample((planned, now) => HybridClock.At(planned, now) == planned);

    [Fact]
    public void A_session_in_a_gym_goes_on_with_the_wall_clock()
    {
        var begun = HybridClock.Next(0, Instant.FromUtc(2026, 11, 27, 18, 0));

        HybridClock.Wall(HybridClock.At(begun + 1, Instant.FromUtc(2026, 11, 27, 18, 3))).Should().Be(Instant.FromUtc(2026, 11, 27, 18, 3));
    }
}
