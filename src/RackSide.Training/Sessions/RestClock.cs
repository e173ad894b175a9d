using NodaTime;

namespace RackSide.Training.Sessions;

/// <summary>
/// A rest reckoned from instants, never by counting ticks, so that a stalled terminal, a closed lid or a killed process
/// does not stretch it.
/// </summary>
/// <param name="Began">When the set before it was accepted.</param>
/// <param name="Ends">When it ends; null while held.</param>
/// <param name="Held">What was left when it was held; zero while it runs.</param>
public sealed record RestClock(Instant Began, Instant? Ends, Duration Held)
{
    /// <summary>How much one press adds or takes off.</summary>
    public static Duration Press { get; } = Duration.FromSeconds(15);

    /// <summary>"Get ready" rings when this much is left.</summary>
    public static Duration ReadyBell { get; } = Duration.FromSeconds(10);

    /// <summary>One more bell rings this long after the end; then silence.</summary>
    public static Duration LateBell { get; } = Duration.FromSeconds(30);

    /// <summary>A running rest.</summary>
    public static RestClock Start(Instant began, Duration length) => new(began, began + length, Duration.Zero);

    /// <summary>Whether it is held.</summary>
    public bool IsHeld => Ends is null;

    /// <summary>What is left; never below zero.</summary>
    public Duration Left(Instant now) => Ends is { } ends ? Duration.Max(Duration.Zero, ends - now) : Held;

    /// <summary>Whether it is time to get ready: the last seconds of a running rest that is long enough to be told twice of.</summary>
    public bool GetReady(Instant now) => !IsHeld && Left(now) <= ReadyBell && Length(now) > ReadyBell + ReadyBell;

    /// <summary>The whole rest as it is now set, from its beginning.</summary>
    public Duration Length(Instant now) => Ends is { } ends ? ends - Began : now - Began + Held;

    /// <summary>Whether it is over.</summary>
    public bool IsOver(Instant now) => Ends <= now;

    /// <summary>Longer or, with a negative length, shorter; not below nothing left.</summary>
    public RestClock Add(Duration more, Instant now)
    {
        var left = Duration.Max(Duration.Zero, Left(now) + more);
        return IsHeld ? this with { Held = left } : this with { Ends = now + left };
    }

    /// <summary>Held where it ran, running where it was held.</summary>
    public RestClock Toggle(Instant now) => IsHeld
        ? this with { Ends = now + Held, Held = Duration.Zero }
        : this with { Ends = null, Held = Left(now) };
}
