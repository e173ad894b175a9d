using NodaTime;
using RackSide.Pages;
using RackSide.Pages.Rack;
using RackSide.Pages.RestDays;
using RackSide.Pages.SetUps;
using RackSide.Training.History;

namespace RackSide.Visits;

/// <summary>
/// One stay beside the rack: the set-up where nobody has joined yet, a session left open, today's plan or the rest day,
/// the session, the end. One conversation is shown at a time, and the next follows from how it ended.
/// </summary>
internal sealed class RackVisit : IConversation, IDisposable
{
    private readonly Gym gym;
    private readonly Desk desk;
    private IConversation inner;
    private Action? wake;

    /// <summary>Begins a stay.</summary>
    /// <param name="gym">Where.</param>
    /// <param name="lifter">Who; null for the first who joined, or for a set-up where nobody has.</param>
    public RackVisit(Gym gym, string? lifter)
    {
        this.gym = gym;
        desk = new Desk(gym);
        Lifter = gym.Lifter(lifter);
        inner = Arrive();
    }

    /// <summary>Who trains; null until somebody joins.</summary>
    public Lifter? Lifter { get; private set; }

    /// <summary>How many facts of the session could not be put on disk.</summary>
    public int Unwritten { get; private set; }

    /// <inheritdoc/>
    public bool Ended { get; private set; }

    /// <inheritdoc/>
    public Action? Wake
    {
        get => wake;
        set => inner.Wake = wake = value;
    }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => inner.Draw(size, now);

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        var bell = inner.Press(key, now);
        GoOn();
        return bell;
    }

    /// <inheritdoc/>
    public Bell Tick(Instant now)
    {
        var bell = inner.Tick(now);
        GoOn();
        return bell;
    }

    /// <summary>Waits until what was accepted is on disk, or cannot be.</summary>
    public void Dispose()
    {
        if (inner is SessionVisit session)
        {
            session.Dispose();
            Unwritten = session.Unwritten;
        }
    }

    private void GoOn()
    {
        if (!inner.Ended || Ended)
        {
            return;
        }

        if (After(inner) is { } next)
        {
            (inner as IDisposable)?.Dispose();
            inner = next;
            inner.Wake = wake;
        }
        else
        {
            Ended = true;
        }
    }

    private IConversation Arrive() => Lifter is null || gym.Rules is null ? desk.SetUp()
        : gym.Logbook.Open(Lifter.Key) is { } open ? desk.Resume(Lifter, open)
        : desk.Today(Lifter);

    /// <summary>What follows a conversation that ended; null for nothing.</summary>
    private IConversation? After(IConversation ended) => ended switch
    {
        SetUpConversation { Answers: { } answers } => Join(answers),
        ResumeConversation { Choice: ResumeChoice.GoOn } => desk.GoOn(Lifter!),
        ResumeConversation { Choice: ResumeChoice.Close } => desk.Close(Lifter!),
        TodayConversation { Begun: true } => desk.Begin(Lifter!),
        TodayConversation { KnowsASet: { } slot } => desk.KnownSet(slot),
        KnownSetConversation known => desk.Know(Lifter!, known),
        RestDayConversation { Choice: RestDayChoice.TrainAnyway } => desk.TrainAnyway(Lifter!),
        RestDayConversation { Choice: RestDayChoice.Weigh weigh } => desk.Weigh(Lifter!, weigh.BodyMass),
        RestDayConversation { Choice: RestDayChoice.WeekPage } => desk.Week(Lifter!),
        WeekConversation => desk.Today(Lifter!),
        _ => null,
    };

    private IConversation Join(SetUpAnswers answers)
    {
        Lifter = desk.Join(answers);
        return desk.Today(Lifter);
    }
}
