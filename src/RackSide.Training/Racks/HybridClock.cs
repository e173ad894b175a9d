using NodaTime;

namespace RackSide.Training.Racks;

/// <summary>
/// The count of identities of a rack that has joined a gym: a hybrid logical clock (Kulkarni, Demirbas and others, "Logical
/// Physical Clocks", 2014, from memory), as one number. Its upper bits are the wall clock in milliseconds since 1970, its lower
/// sixteen a counter. It never goes back, whatever the wall clock does, and it goes past every count seen from another rack.
/// So an identity's order is the order of time where clocks are right, and never puts an answer before what it answers.
/// </summary>
public static class HybridClock
{
    private const int CounterBits = 16;

    // The year 6429: no clock is believed beyond it, or the count would run out of bits.
    private const long Latest = (1L << 47) - 1;

    // The first count that is a reading. A rack alone counts 1, 2, 3 ... and never comes near it.
    private const long First = 1L << 32;

    /// <summary>The count after another one.</summary>
    /// <param name="last">The highest count given or seen; 0 where there is none.</param>
    /// <param name="now">The wall clock, right or wrong.</param>
    /// <returns>More than <paramref name="last"/>, and no less than the wall clock's reading.</returns>
    public static long Next(long last, Instant now) => Math.Max(last + 1, Reading(now));

    /// <summary>The same for a count that goes on by itself: one that is no reading yet only counts.</summary>
    /// <param name="planned">The count that would be next.</param>
    /// <param name="now">The wall clock, right or wrong.</param>
    public static long At(long planned, Instant now) => planned < First ? planned : Math.Max(planned, Reading(now));

    /// <summary>The smallest count of a moment; the first reading of all for one before 1970.</summary>
    public static long Reading(Instant now) =>
        Math.Max(First, Math.Clamp(now.ToUnixTimeMilliseconds(), 0, Latest) << CounterBits);

    /// <summary>The wall clock's part of a count; null for one that is no reading.</summary>
    public static Instant? Wall(long count) => count < First ? null : Instant.FromUnixTimeMilliseconds(count >> CounterBits);
}
