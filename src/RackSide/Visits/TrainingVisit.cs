using NodaTime;
using RackSide.Logbook;
using RackSide.Pages;
using RackSide.Training.History;
using RackSide.Training.Sessions;

namespace RackSide.Visits;

/// <summary>
/// A session on the screen, or two on one bar: keys and time become events, effects become writing and bells, and what is
/// not on disk yet is known to those who see to it that nothing is lost.
/// </summary>
internal abstract class TrainingVisit : IConversation, IDisposable
{
    private readonly FactWriter writer;

    /// <summary>A visit whose facts go to a gym's logbook.</summary>
    /// <param name="gym">The gym.</param>
    /// <param name="unwritten">What of its beginning is not on disk yet.</param>
    protected TrainingVisit(Gym gym, IReadOnlyList<SessionEntry> unwritten)
    {
        writer = new FactWriter(gym.Logbook, gym.Clock, () => Wake?.Invoke());
        foreach (var entry in unwritten)
        {
            writer.Write(entry);
        }
    }

    /// <summary>Whether the settings are to be shown over the session; whoever shows them takes it back.</summary>
    public bool SettingsAsked { get; set; }

    /// <summary>The entries that are not on disk, in their order.</summary>
    public IReadOnlyList<SessionEntry> Unwritten => writer.Unwritten;

    /// <summary>Why the last try to write failed, in a few words; null where it did not.</summary>
    public string? Trouble => writer.Trouble;

    /// <summary>Whether all of it is over, so that nothing can be gone on with.</summary>
    public abstract bool IsClosed { get; }

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public bool Ended { get; private set; }

    /// <summary>Whether letters are typed now and mean no verbs.</summary>
    protected abstract bool TakesText { get; }

    /// <inheritdoc/>
    public abstract Page Draw(PageSize size, Instant now);

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now) => Take(KeyTable.EventOf(key, now, TakesText) ?? new OddKey(now));

    /// <inheritdoc/>
    public Bell Tick(Instant now)
    {
        while (writer.Answer() is { } answer)
        {
            Take(answer);
        }

        return Take(new Ticked(now));
    }

    /// <summary>Waits until everything is on disk; false where it cannot be, or takes too long.</summary>
    public bool WaitUntilWritten() => writer.WaitUntilWritten();

    /// <summary>Goes on with it after it was left.</summary>
    public void GoOn() => Ended = false;

    /// <summary>Tries no more to write: what is not on disk was given up, or is elsewhere.</summary>
    public void GiveUp() => writer.GiveUp();

    /// <summary>Waits until everything is on disk, or cannot be.</summary>
    public void Dispose() => writer.Dispose();

    /// <summary>Steps, and gives what is to be done, each with the session it is of.</summary>
    protected abstract IEnumerable<(FactId Session, Effect Effect)> Step(SessionEvent e);

    private Bell Take(SessionEvent e)
    {
        var bell = Bell.None;
        foreach (var (session, effect) in Step(e))
        {
            bell = Do(session, effect) is var rung && rung > bell ? rung : bell;
        }

        return bell;
    }

    private Bell Do(FactId session, Effect effect)
    {
        switch (effect)
        {
            case WriteFact write:
                writer.Write(session, write.Fact);
                return Bell.None;
            case RingBell ring:
                return ring.Times > 1 ? Bell.Twice : Bell.Once;
            case OpenSettings:
                SettingsAsked = true;
                return Bell.None;
            case Leave:
                Ended = true;
                return Bell.None;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }
}
