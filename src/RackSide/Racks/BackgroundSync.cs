using RackSide.Logbook;

namespace RackSide.Racks;

/// <summary>
/// The exchange beside the screen, on a thread of its own that nothing waits for. It takes few events at once, so that the
/// logbook is never held longer than a set's own writing holds it; what is long, it leaves for when nobody is there.
/// </summary>
internal sealed class BackgroundSync : IDisposable
{
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(2), Ask = TimeSpan.FromSeconds(15), Longest = TimeSpan.FromMinutes(5);

    private readonly LiteLogbook book;
    private readonly IGym gym;
    private readonly TimeProvider time;
    private readonly CancellationTokenSource stop = new();
    private readonly Thread thread;
    private volatile string word;
    private volatile bool resting;
    private volatile bool erasedCame;

    /// <summary>Starts it.</summary>
    public BackgroundSync(LiteLogbook book, IGym gym, TimeProvider time)
    {
        (this.book, this.gym, this.time) = (book, gym, time);
        word = "waiting";
        thread = new Thread(Run) { IsBackground = true, Name = "gym" };
        thread.Start();
    }

    /// <summary>What the screen says of it: <c>shared</c> where the gym has everything, <c>waiting</c> where something waits or the gym cannot be asked.</summary>
    public string Word => word;

    /// <summary>Whether nobody is there who could wait for it.</summary>
    public bool Resting
    {
        set => resting = value;
    }

    /// <summary>Whether somebody was erased on another rack whose entries are still on this disk.</summary>
    public bool ErasedCame => erasedCame;

    /// <summary>Stops it; where it waits for the gym, the gym's program is ended.</summary>
    public void Dispose()
    {
        stop.Cancel();
        (gym as IDisposable)?.Dispose();
        thread.Join();
        stop.Dispose();
    }

    private void Run()
    {
        var (asked, failures) = (time.GetTimestamp() - time.TimestampFrequency * 3600, 0);
        do
        {
            if (book.Share.Waits || time.GetElapsedTime(asked) >= Ask)
            {
                failures = Exchange() ? 0 : failures + 1;
                asked = time.GetTimestamp();
            }
        }
        while (!stop.Token.WaitHandle.WaitOne(failures == 0 ? Look : Later(failures)));
    }

    private bool Exchange()
    {
        try
        {
            var free = resting;
            new GymSync(book, gym, () => stop.IsCancellationRequested) { Lightly = !free }.Run(free ? GymSync.Some : GymSync.Few);
            erasedCame = book.HoldsErased;
            word = book.Share.Waits ? "waiting" : "shared";
            return true;
        }
        catch (Exception)
        {
            // Whatever it is, a session goes on, and it is tried again. The commands say why; here the lifter has sets to do.
            word = "waiting";
            return false;
        }
    }

    // Five, ten, twenty seconds ... five minutes: a gym whose server is down is not asked by ten racks all the time.
    private static TimeSpan Later(int failures) => TimeSpan.FromSeconds(Math.Min(Longest.TotalSeconds, 5 * Math.Pow(2, Math.Min(failures, 10) - 1)));
}
