using NodaTime;

namespace RackSide.Time;

/// <summary>
/// The program's clock, which can be told the right date. The system's own is left alone: to set it takes rights that a
/// training program should not have.
/// </summary>
/// <param name="clock">The clock it goes by.</param>
internal sealed class MendedClock(IClock clock) : IClock
{
    private long offset;

    /// <inheritdoc/>
    public Instant GetCurrentInstant() => clock.GetCurrentInstant() + Duration.FromTicks(Interlocked.Read(ref offset));

    /// <summary>Today is another date, at the hour the clock shows; not before the newest entry where that is of the same date.</summary>
    public void Mend(LocalDate today, DateTimeZone zone, Instant? last)
    {
        var shown = GetCurrentInstant();
        var meant = (today + shown.InZone(zone).TimeOfDay).InZoneLeniently(zone).ToInstant();
        var later = last is { } newest && newest.InZone(zone).Date == today && meant < newest ? newest + Duration.FromMinutes(1) : meant;
        Interlocked.Add(ref offset, (later - shown).BclCompatibleTicks);
    }
}
