using NodaTime;
using RackSide.Pages;
using RackSide.Pages.Sharing;
using RackSide.Training.History;
using RackSide.Training.Sessions;
using RackSide.Training.Summary;

namespace RackSide.Visits;

/// <summary>Two sessions on one bar on the screen: each lifter's facts go to that lifter's own session in the logbook.</summary>
internal sealed class SharedVisit : ITrainingVisit
{
    private readonly FactWriter writer;
    private readonly Func<Session, WeekSummary> summarise;
    private ((int Lifter, int Facts) Of, WeekSummary Week)? week;

    /// <summary>Shows them.</summary>
    /// <param name="both">As they begin or are resumed.</param>
    /// <param name="gym">Where their facts go.</param>
    public SharedVisit(TwoOnOneBar both, Gym gym)
    {
        Both = both;
        writer = new FactWriter(gym.Logbook, gym.Clock, () => Wake?.Invoke());
        summarise = s =>
        {
            gym.TrainBy(s.Setting.Lifter);
            return gym.Week(s.Setting.Lifter, s.Record, s.Head.Date);
        };
    }

    /// <summary>The two as they stand.</summary>
    public TwoOnOneBar Both { get; private set; }

    /// <inheritdoc/>
    public IReadOnlyList<(FactId Session, Fact Fact)> Unwritten => writer.Unwritten;

    /// <inheritdoc/>
    public string? Trouble => writer.Trouble;

    /// <inheritdoc/>
    public bool IsClosed => Both.Both.All(s => s.Phase is Training.Sessions.Ended);

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public bool Ended { get; private set; }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => SharedPages.Draw(Both, WeekNow(), size, now);

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

    /// <inheritdoc/>
    public bool WaitUntilWritten() => writer.WaitUntilWritten();

    /// <inheritdoc/>
    public void GoOn() => Ended = false;

    /// <inheritdoc/>
    public void GiveUp() => writer.GiveUp();

    /// <summary>Waits until everything is on disk, or cannot be.</summary>
    public void Dispose() => writer.Dispose();

    private Bell Take(SessionEvent e)
    {
        (Both, var effects) = BarSteps.Step(Both, e);
        var bell = Bell.None;
        foreach (var (lifter, effect) in effects)
        {
            bell = Do(lifter, effect) is var rung && rung > bell ? rung : bell;
        }

        return bell;
    }

    private Bell Do(int lifter, Effect effect)
    {
        switch (effect)
        {
            case WriteFact write:
                writer.Write(Both.Both[lifter].Head.Id, write.Fact);
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
