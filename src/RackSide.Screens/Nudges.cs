namespace RackSide.Screens;

/// <summary>
/// What other threads may ask of the screen's thread. They only set flags, which the loop reads on its next turn: the
/// library's own queue holds its lock while a timer runs, so a conversation that waited in a tick for a thread that wakes
/// it would wait for ever.
/// </summary>
/// <param name="stir">Called after each, to end the loop's sleep; null where the loop does not sleep.</param>
internal sealed class Nudges(Action? stir = null)
{
    private const int None = -1;
    private int stop = None;
    private int woken;
    private int resumed;

    /// <summary>Asks for the end. The first reason given stays.</summary>
    public void Stop(ScreenEnd reason)
    {
        Interlocked.CompareExchange(ref stop, (int)reason, None);
        stir?.Invoke();
    }

    /// <summary>Says that the page may have changed.</summary>
    public void Wake()
    {
        Interlocked.Exchange(ref woken, 1);
        stir?.Invoke();
    }

    /// <summary>Says that the process was stopped and goes on, so that the terminal may show and do anything.</summary>
    public void Resume()
    {
        Interlocked.Exchange(ref resumed, 1);
        stir?.Invoke();
    }

    /// <summary>Says that the window has another size, which the library finds out on its next turn.</summary>
    public void Resize() => stir?.Invoke();

    /// <summary>The end asked for, if any.</summary>
    public ScreenEnd? Stopping => Volatile.Read(ref stop) is var reason and not None ? (ScreenEnd)reason : null;

    /// <summary>Whether the screen was woken since last asked.</summary>
    public bool TakeWake() => Interlocked.Exchange(ref woken, 0) == 1;

    /// <summary>Whether the process went on since last asked.</summary>
    public bool TakeResume() => Interlocked.Exchange(ref resumed, 0) == 1;
}
