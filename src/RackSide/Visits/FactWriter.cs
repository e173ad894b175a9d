using System.Collections.Concurrent;
using NodaTime;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Sessions;

namespace RackSide.Visits;

/// <summary>
/// Puts facts on disk in their order on a thread of its own, so that a slow card never holds up a key, and reports each
/// as an event. Where writing fails it keeps trying; nothing later overtakes what waits.
/// </summary>
internal sealed class FactWriter : IDisposable
{
    private static readonly TimeSpan LastPatience = TimeSpan.FromSeconds(5);

    private readonly ILogbook logbook;
    private readonly IClock clock;
    private readonly Action wake;
    private readonly TimeSpan patience;
    private readonly BlockingCollection<SessionEntry> waiting = [];
    private readonly List<SessionEntry> unwritten = [];
    private readonly ConcurrentQueue<SessionEvent> answers = new();
    private readonly ManualResetEventSlim closing = new();
    private readonly Thread thread;
    private string? trouble;

    /// <summary>Starts writing.</summary>
    /// <param name="logbook">Where to.</param>
    /// <param name="clock">Dates the answers.</param>
    /// <param name="wake">Called from the writer's thread when an answer waits.</param>
    /// <param name="patience">How long it waits before it tries again; two seconds if not said.</param>
    public FactWriter(ILogbook logbook, IClock clock, Action wake, TimeSpan? patience = null)
    {
        (this.logbook, this.clock, this.wake, this.patience) = (logbook, clock, wake, patience ?? TimeSpan.FromSeconds(2));
        thread = new Thread(Run) { IsBackground = true, Name = "fact writer" };
        thread.Start();
    }

    /// <summary>The entries that are not on disk, in their order.</summary>
    public IReadOnlyList<SessionEntry> Unwritten
    {
        get
        {
            lock (unwritten)
            {
                return [.. unwritten];
            }
        }
    }

    /// <summary>Why the last try failed, in a few words; null where it did not.</summary>
    public string? Trouble
    {
        get
        {
            lock (unwritten)
            {
                return trouble;
            }
        }
    }

    /// <summary>Hands a fact over.</summary>
    public void Write(FactId session, Fact fact) => Write(new SessionEntry.Added(session, fact));

    /// <summary>Hands an entry over.</summary>
    public void Write(SessionEntry entry)
    {
        lock (unwritten)
        {
            unwritten.Add(entry);
        }

        waiting.Add(entry);
    }

    /// <summary>Waits until all is on disk, but no longer than a write that fails or takes too long.</summary>
    /// <returns>Whether all is.</returns>
    public bool WaitUntilWritten()
    {
        lock (unwritten)
        {
            while (unwritten.Count > 0 && trouble is null && Monitor.Wait(unwritten, LastPatience))
            {
            }

            return unwritten.Count == 0;
        }
    }

    /// <summary>Has it try no more: what is not on disk was given up, or is elsewhere.</summary>
    public void GiveUp() => closing.Set();

    /// <summary>The next answer, or null.</summary>
    public SessionEvent? Answer() => answers.TryDequeue(out var answer) ? answer : null;

    /// <summary>Waits for what is handed over, and for one last try where writing fails.</summary>
    public void Dispose()
    {
        waiting.CompleteAdding();
        if (!thread.Join(LastPatience))
        {
            closing.Set();
            thread.Join(LastPatience);
        }
    }

    private void Run()
    {
        foreach (var entry in waiting.GetConsumingEnumerable())
        {
            while (!TryWrite(entry))
            {
                if (closing.Wait(patience))
                {
                    return;
                }
            }

            SettleWhenIdle();
        }
    }

    // After the answer: a lifter is not kept waiting for the second place on disk.
    private void SettleWhenIdle()
    {
        if (waiting.Count == 0)
        {
            logbook.Settle();
        }
    }

    private bool TryWrite(SessionEntry entry)
    {
        try
        {
            logbook.Write(entry);
            Answered(written: true, why: null);
            Tell(new FactWritten(clock.GetCurrentInstant(), entry.Id));
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Answered(written: false, Why(e));
            Tell(new WriteFailed(clock.GetCurrentInstant(), entry.Id, $"not on disk yet, still trying: {Why(e)}"));
            return false;
        }
    }

    private void Answered(bool written, string? why)
    {
        lock (unwritten)
        {
            unwritten.RemoveRange(0, written ? 1 : 0);
            trouble = why;
            Monitor.PulseAll(unwritten);
        }
    }

    // The system's own words, without the path that it adds: the page has little room.
    private static string Why(Exception e) => (e.InnerException ?? e).Message.Split(" : '")[0].TrimEnd('.');

    private void Tell(SessionEvent answer)
    {
        answers.Enqueue(answer);
        wake();
    }
}
