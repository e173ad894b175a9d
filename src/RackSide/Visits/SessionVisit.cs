using NodaTime;
using RackSide.Pages;
using RackSide.Pages.Rack;
using RackSide.Training.History;
using RackSide.Training.Sessions;
using RackSide.Training.Summary;

namespace RackSide.Visits;

/// <summary>A session on the screen: keys and time become events, effects become writing and bells, pages come from the state.</summary>
internal sealed class SessionVisit : IConversation, IDisposable
{
    private readonly FactWriter writer;
    private readonly Func<Session, WeekSummary> summarise;
    private (int Facts, WeekSummary Week)? week;

    /// <summary>Shows a session.</summary>
    /// <param name="session">As it begins or is resumed.</param>
    /// <param name="gym">Where its facts go.</param>
    public SessionVisit(Session session, Gym gym)
    {
        Session = session;
        writer = new FactWriter(gym.Logbook, gym.Clock, () => Wake?.Invoke());
        summarise = s => gym.Week(s.Setting.Lifter, s.Record, s.Head.Date);
    }

    /// <summary>The session as it stands.</summary>
    public Session Session { get; private set; }

    /// <summary>The facts that are not on disk, in their order.</summary>
    public IReadOnlyList<(FactId Session, Fact Fact)> Unwritten => writer.Unwritten;

    /// <summary>Why the last try to write failed, in a few words; null where it did not.</summary>
    public string? Trouble => writer.Trouble;

    /// <summary>Whether the session is over, so that nothing can be gone on with.</summary>
    public bool IsClosed => Session.Phase is Training.Sessions.Ended;

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public bool Ended { get; private set; }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => SessionPages.Draw(Session, WeekNow(), size, now);

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now) => Take(KeyTable.EventOf(key, now) ?? new OddKey(now));

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

    private Bell Take(SessionEvent e)
    {
        (Session, var effects) = SessionSteps.Step(Session, e);
        var bell = Bell.None;
        foreach (var effect in effects)
        {
            bell = Do(effect) is var rung && rung > bell ? rung : bell;
        }

        return bell;
    }

    private Bell Do(Effect effect)
    {
        switch (effect)
        {
            case WriteFact write:
                writer.Write(Session.Head.Id, write.Fact);
                return Bell.None;
            case RingBell ring:
                return ring.Times > 1 ? Bell.Twice : Bell.Once;
            case Leave:
                Ended = true;
                return Bell.None;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private WeekSummary? WeekNow()
    {
        if (Session.Phase is not (Finishing or Training.Sessions.Ended))
        {
            return null;
        }

        if (week?.Facts != Session.Facts.Count)
        {
            week = (Session.Facts.Count, summarise(Session));
        }

        return week.Value.Week;
    }
}
