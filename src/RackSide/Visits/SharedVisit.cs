using NodaTime;
using RackSide.Logbook;
using RackSide.Pages;
using RackSide.Pages.Sharing;
using RackSide.Training.History;
using RackSide.Training.Sessions;
using RackSide.Training.Summary;

namespace RackSide.Visits;

/// <summary>Two sessions on one bar on the screen: each lifter's facts go to that lifter's own session in the logbook.</summary>
internal sealed class SharedVisit : TrainingVisit
{
    private readonly Func<Session, WeekSummary> summarise;
    private ((int Lifter, int Facts) Of, WeekSummary Week)? week;

    /// <summary>Shows them.</summary>
    /// <param name="both">As they begin or are resumed.</param>
    /// <param name="gym">Where their facts go.</param>
    /// <param name="unwritten">What of their beginning is not on disk yet.</param>
    public SharedVisit(TwoOnOneBar both, Gym gym, IReadOnlyList<SessionEntry> unwritten)
        : base(gym, unwritten)
    {
        Both = both;
        summarise = s =>
        {
            gym.TrainBy(s.Setting.Lifter);
            return gym.Week(s.Setting.Lifter, s.Record, s.Head.Date);
        };
    }

    /// <summary>The two as they stand.</summary>
    public TwoOnOneBar Both { get; private set; }

    /// <inheritdoc/>
    public override bool IsClosed => Both.Both.All(s => s.Phase is Training.Sessions.Ended);

    /// <inheritdoc/>
    protected override bool TakesText => Both.InTurn.TakesText;

    /// <inheritdoc/>
    public override Page Draw(PageSize size, Instant now) => SharedPages.Draw(Both, WeekNow(), size, now);

    /// <inheritdoc/>
    protected override IEnumerable<(FactId Session, Effect Effect)> Step(SessionEvent e)
    {
        (Both, var effects) = BarSteps.Step(Both, e);
        return effects.Select(each => (Both.Both[each.Lifter].Head.Id, each.Effect));
    }

    private WeekSummary? WeekNow()
    {
        if (Both.InTurn.Phase is not (Finishing or Training.Sessions.Ended))
        {
            return null;
        }

        var of = (Both.Turn, Both.InTurn.Facts.Count);
        if (week?.Of != of)
        {
            week = (of, summarise(Both.InTurn));
        }

        return week?.Week;
    }
}
