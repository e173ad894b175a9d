using NodaTime;

namespace RackSide.Time;

/// <summary>
/// The wall time at the start, plus time elapsed since. It never runs backwards and does not jump when the system's clock
/// is set, yet goes on while the machine sleeps, so that a rest neither freezes under a closed lid nor ends at once when
/// a board without a battery learns the date.
/// </summary>
/// <param name="start">The wall time at the start.</param>
/// <param name="elapsed">Time since some fixed moment, running on through sleep.</param>
/// <param name="speed">How many times faster than real time it runs; 1 outside tests.</param>
internal sealed class SteadyClock(Instant start, Func<Duration> elapsed, double speed = 1) : IClock
{
    private readonly Duration began = elapsed();

    /// <inheritdoc/>
    public Instant GetCurrentInstant() => start + ((elapsed() - began) * speed);
}
