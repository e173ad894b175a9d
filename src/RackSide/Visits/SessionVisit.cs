using NodaTime;
using RackSide.Logbook;
using RackSide.Pages;
using RackSide.Pages.Rack;
using RackSide.Training.History;
using RackSide.Training.Sessions;
using RackSide.Training.Summary;

namespace RackSide.Visits;

/// <summary>A session on the screen; its pages come from its state.</summary>
internal sealed class SessionVisit : TrainingVisit
{
    private readonly Func<Session, WeekSummary> summarise;
    private (int Facts, WeekSummary Week)? week;

    /// <summary>Shows a session.</summary>
    /// <param name="session">As it begins or is resumed.</param>
    /// <param name="gym">Where its facts go.</param>
    /// <param name="unwritten">What of its beginning is not on disk yet; null for nothing.</param>
    public SessionVisit(Session session, Gym gym, IReadOnlyList<SessionEntry>? unwritten = null)
        : base(gym, unwritten ?? [])
    {
        Session = session;
        summarise = s => gym.Week(s.Setting.Lifter, s.Record, s.Head.Date);
    }

    /// <summary>The session as it stands.</summary>
    public Session Session { get; private set; }

    /// <inheritdoc/>
    public override bool IsClosed => Session.Phase is Training.Sessions.Ended;

    /// <inheritdoc/>
    protected override bool TakesText => Session.TakesText;

    /// <inheritdoc/>
    public override Page Draw(PageSize size, Instant now) => SessionPages.Draw(Session, WeekNow(), size, now);

    /// <inheritdoc/>
    protected override IEnumerable<(FactId Session, Effect Effect)> Step(SessionEvent e)
    {
        (Session, var effects) = SessionSteps.Step(Session, e);
        return effects.Select(effect => (Session.Head.Id, effect));
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
