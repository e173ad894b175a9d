using System.Diagnostics;

namespace RackSide.Screens.Waiting;

/// <summary>How long the screen's thread may sleep, and when a tick is due.</summary>
/// <remarks>
/// Ten ticks a second while something moves. Once the page has moved by itself twice a second apart, it shows a clock: then
/// the thread sleeps until just before the next second and looks closely for it, which takes two or three ticks. Over a page
/// that stands still there is one a second. What must not wait for a tick ends the sleep: a key, a new window size, a
/// signal, news from another thread.
/// </remarks>
internal sealed class Pulse
{
    private static readonly TimeSpan Lively = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan Still = TimeSpan.FromMilliseconds(1000);
    private static readonly TimeSpan StandsStillAfter = TimeSpan.FromMilliseconds(2500);

    private static readonly TimeSpan BeforeTheSecond = TimeSpan.FromMilliseconds(900);
    private static readonly TimeSpan AfterTheSecond = TimeSpan.FromMilliseconds(1150);
    private static readonly TimeSpan Close = TimeSpan.FromMilliseconds(40);

    private static readonly TimeSpan Room = TimeSpan.FromMilliseconds(80);

    // The library takes a lone ESC for a key when nothing has followed it for 50 ms, and needs a turn to notice.
    private static readonly TimeSpan Settling = TimeSpan.FromMilliseconds(200);
    private static readonly TimeSpan SettlingTurn = TimeSpan.FromMilliseconds(20);

    private readonly Stir stir;
    private readonly TimeProvider time;
    private long ticked;
    private long moved;
    private long stirred;
    private bool inSeconds;

    /// <summary>A pulse that begins lively.</summary>
    /// <param name="stir">What the thread sleeps on.</param>
    /// <param name="time">Measures how long ago things were; it must not run backwards.</param>
    public Pulse(Stir stir, TimeProvider time)
    {
        (this.stir, this.time) = (stir, time);
        ticked = moved = stirred = time.GetTimestamp();
    }

    /// <summary>How long until a tick is due; zero or less where it is.</summary>
    public TimeSpan Left => inSeconds && Since(moved) < AfterTheSecond
        ? Longer(BeforeTheSecond - Since(moved), Close - Since(ticked))
        : (Since(moved) < StandsStillAfter || Since(stirred) < StandsStillAfter ? Lively : Still) - Since(ticked);

    /// <summary>Whether nobody has stirred for a while and no tick is due soon, so that some milliseconds of other work are in nobody's way.</summary>
    public bool Idle => Since(stirred) >= StandsStillAfter && Left >= Room;

    /// <summary>Sleeps until a tick is due or somebody stirs.</summary>
    public void Rest()
    {
        var longest = Since(stirred) < Settling && Left > SettlingTurn ? SettlingTurn : Left;
        if (longest > TimeSpan.Zero && stir.Sleep(longest))
        {
            Stirred();
        }
    }

    /// <summary>Says that somebody stirred: what moves now, and when, is not known.</summary>
    public void Stirred()
    {
        stirred = time.GetTimestamp();
        inSeconds = false;
    }

    /// <summary>Whether a tick is due; asking takes it.</summary>
    public bool TakeTick()
    {
        if (Left > TimeSpan.Zero)
        {
            return false;
        }

        ticked = time.GetTimestamp();
        return true;
    }

    /// <summary>Says that the page moved, by itself or by a key.</summary>
    public void Moved()
    {
        inSeconds = Since(moved) > BeforeTheSecond && Since(moved) < AfterTheSecond && Since(stirred) > Since(moved);
        moved = time.GetTimestamp();
    }

    private TimeSpan Since(long then) => time.GetElapsedTime(then);

    private static TimeSpan Longer(TimeSpan a, TimeSpan b) => a > b ? a : b;
}
