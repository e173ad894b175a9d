using System.Collections.Concurrent;
using NodaTime;
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
    private readonly BlockingCollection<(FactId Session, Fact Fact)> waiting = [];
    private readonly ConcurrentQueue<SessionEvent> answers = new();
    private readonly ManualResetEventSlim closing = new();
    private readonly Thread thread;
    private int unwritten;

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

    /// <summary>How many facts are not on disk.</summary>
    public int Unwritten => Volatile.Read(ref unwritten);

    /// <summary>Hands a fact over.</summary>
    public void Write(FactId session, Fact fact)
    {
        Interlocked.Increment(ref unwritten);
        waiting.Add((session, fact));
    }

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
        foreach (var (session, fact) in waiting.GetConsumingEnumerable())
        {
            while (!TryWrite(session, fact))
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

    private bool TryWrite(FactId session, Fact fact)
    {
        try
        {
            logbook.Append(session, fact);
            Interlocked.Decrement(ref unwritten);
            Tell(new FactWritten(clock.GetCurrentInstant(), fact.Id));
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Tell(new WriteFailed(clock.GetCurrentInstant(), fact.Id, $"not on disk yet, still trying: {e.Message}"));
            return false;
        }
    }

    private void Tell(SessionEvent answer)
    {
        answers.Enqueue(answer);
        wake();
    }
}
