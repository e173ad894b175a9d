using NodaTime;
using RackSide.Kiosk;
using RackSide.Logbook;
using RackSide.Pages;
using RackSide.Pages.Bodies;
using RackSide.Pages.Calendars;
using RackSide.Pages.Kits;
using RackSide.Pages.Lifters;
using RackSide.Pages.LookBacks;
using RackSide.Pages.Rack;
using RackSide.Pages.RestDays;
using RackSide.Pages.Settings;
using RackSide.Pages.SetUps;
using RackSide.Pages.Sharing;
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
    private readonly Rescue rescue;
    private readonly ClockDoubt? doubt;
    private readonly GuessBrakes brakes;
    private readonly bool joining;
    private IConversation inner;
    private TrainingVisit? left;
    private Lifter? pinOf;
    private SettingsConversation? settings;
    private LocalDate shownOn;
    private Action? wake;

    /// <summary>Begins a stay.</summary>
    /// <param name="gym">Where.</param>
    /// <param name="lifter">Who; null for the first who joined, or for a set-up where nobody has.</param>
    /// <param name="joining">Whether somebody new joins instead.</param>
    /// <param name="brakes">How far the guessing of PINs is slowed; of its own if not given.</param>
    /// <param name="places">Gives other places for a copy, such as USB sticks; none if not said.</param>
    /// <param name="with">With whom the bar is shared; null for nobody, or as it was where a shared session is open.</param>
    /// <exception cref="Refusal">One of them trains not here, or cannot share a bar today.</exception>
    public RackVisit(
        Gym gym, string? lifter, bool joining = false, GuessBrakes? brakes = null, Func<IReadOnlyList<string>>? places = null, string? with = null)
    {
        (this.gym, this.joining, this.brakes) = (gym, joining, brakes ?? new GuessBrakes());
        rescue = new Rescue(gym, places ?? (() => []));
        desk = new Desk(gym);
        Lifter = joining ? null : gym.Lifter(lifter);
        if (Lifter is not null)
        {
            gym.TrainBy(Lifter);
        }

        With = with is null ? null : desk.Sharing.With(Lifter, with);

        shownOn = gym.Today;
        doubt = gym.Doubt();
        inner = doubt is null ? AtTheDoor() : desk.AskForTheDate(doubt);
    }

    /// <summary>Who trains; null until somebody joins.</summary>
    public Lifter? Lifter { get; private set; }

    /// <summary>The entries of the session that could not be put on disk.</summary>
    public IReadOnlyList<SessionEntry> Unwritten { get; private set; } = [];

    /// <summary>Whether something of the session that runs cannot be put on disk now.</summary>
    public bool IsUnwritten => (left ?? inner) is TrainingVisit { Trouble: not null };

    /// <summary>The copy that holds them; null where none was made.</summary>
    public string? CopiedTo => rescue.CopiedTo;

    /// <summary>With whom the bar is or was shared; null for nobody.</summary>
    public Lifter? With { get; private set; }

    /// <summary>The two sessions on one bar that are shown now; null where it is something else.</summary>
    public Training.Sessions.TwoOnOneBar? Shared => (inner as SharedVisit)?.Both;

    /// <inheritdoc/>
    public bool Ended { get; private set; }

    /// <inheritdoc/>
    public Action? Wake
    {
        get => wake;
        set => inner.Wake = wake = value;
    }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => settings?.Draw(size, now) ?? inner.Draw(size, now);

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        if (settings is { } open)
        {
            open.Press(key, now);
            settings = open.Ended ? null : open;
            return Bell.None;
        }

        var bell = inner.Press(Meant(key, now), now);
        if (inner is PinConversation asked)
        {
            brakes.Keep(pinOf!, asked);
        }

        GoOn();
        return Heard(bell);
    }

    /// <inheritdoc/>
    public Bell Tick(Instant now)
    {
        var bell = inner.Tick(now);
        GoOn();
        TurnTheDay();
        return Heard(bell);
    }

    /// <summary>Waits until what was accepted is on disk, or cannot be.</summary>
    public void Dispose()
    {
        if ((left ?? inner) is TrainingVisit training)
        {
            training.Dispose();
            Unwritten = training.Unwritten;
        }
    }

    /// <summary>Writes the logbook with what could not be put on disk into another folder, after the screen has gone.</summary>
    /// <returns>The file.</returns>
    /// <exception cref="IOException">It could not be written there either.</exception>
    public string CopyTo(string folder) => rescue.CopyTo(folder, Unwritten);

    // Where letters are typed a key is its letter, whatever it means elsewhere.
    private KeyPress Meant(KeyPress key, Instant now) => gym.Rules?.Screen.Keys is { Changed.Count: > 0 } layout && !inner.Draw(PageSize.ToRead, now).Tells.TakesLetters
        ? layout.Meant(key)
        : key;

    private Bell Heard(Bell bell) => gym.Rules is { Sound: false } ? Bell.None : bell;

    // A page left standing over midnight shows the new day, or what was offered yesterday would be dated today. A session
    // goes on: it belongs to the day it began.
    private void TurnTheDay()
    {
        if (gym.Today != shownOn)
        {
            shownOn = gym.Today;
            if (inner is TodayConversation or RestDayConversation or MoreConversation or CalendarConversation or StandingConversation or ShareConversation or LookBackConversation)
            {
                inner = desk.Today(Lifter!);
                inner.Wake = wake;
            }
        }
    }

    private void GoOn()
    {
        if (inner is TrainingVisit { SettingsAsked: true } asked)
        {
            asked.SettingsAsked = false;
            settings = desk.Settings();
        }

        if (!inner.Ended || Ended)
        {
            return;
        }

        settings = inner is MoreConversation { Choice: MoreChoice.Settings } or RestDayConversation { Choice: RestDayChoice.Settings } ? desk.Settings() : settings;

        if (inner is TrainingVisit { } session && left is null && !session.WaitUntilWritten())
        {
            // It goes on trying under the page that says so.
            left = session;
            inner = rescue.Ask(session);
            inner.Wake = wake;
        }
        else if (After(inner) is { } next)
        {
            (inner as IDisposable)?.Dispose();
            inner = Shown(next);
            inner.Wake = wake;
        }
        else
        {
            Ended = true;
        }
    }

    private IConversation Shown(IConversation next)
    {
        With = next is SharedVisit shared ? shared.Both.Both.Select(s => s.Setting.Lifter).First(l => l.Key != Lifter!.Key) : With;
        return next;
    }

    private IConversation AtTheDoor() => Lifter is { Pin: not null } asked ? Ask(asked) : Arrive();

    private PinConversation Ask(Lifter lifter) => brakes.Ask(pinOf = lifter);

    /// <summary>Both begin; the one who was invited proves to be there first, where a PIN is set.</summary>
    private IConversation BeginShared() => desk.Sharing.Invited is { Pin: not null } with && pinOf?.Key != with.Key ? Ask(with) : desk.Sharing.Begin();

    private IConversation Arrive() => Lifter is null || gym.Rules is null ? desk.SetUp(joining && gym.Rules is not null)
        : gym.Logbook.Open(Lifter.Key) is { } open && (With is null || desk.Sharing.Partner(open)?.Lifter.Key == With.Key) ? desk.Resume(Lifter, open)
        : With is not null ? desk.Sharing.Share(Lifter, With)
        : desk.Today(Lifter);

    /// <summary>What follows a conversation that ended; null for nothing.</summary>
    private IConversation? After(IConversation ended) => ended switch
    {
        ClockConversation { Today: { } today } => Mended(today),
        PinConversation { Right: true } => pinOf!.Key == Lifter!.Key ? Arrive() : desk.Sharing.Begin(),
        SetUpConversation { Answers: { } answers } => Join(answers),
        ResumeConversation { Choice: ResumeChoice.GoOn } => desk.GoOn(Lifter!),
        ResumeConversation { Choice: ResumeChoice.Close } => desk.Close(Lifter!),
        TodayConversation { Begun: true } => desk.Begin(Lifter!),
        TodayConversation { KnowsASet: { } slot } => desk.KnownSet(slot),
        KnownSetConversation known => desk.Know(Lifter!, known),
        TodayConversation { More: true } => desk.More(Lifter!),
        MoreConversation { Choice: MoreChoice.Share } more => desk.Share(Lifter!, more.Partner),
        ShareConversation { Begun: true } => BeginShared(),
        ShareConversation => desk.NotShared(Lifter!),
        MoreConversation { Choice: MoreChoice.LessTime } => desk.LessTime(),
        MoreConversation { Choice: MoreChoice.WholePlan } => desk.WholePlan(),
        MoreConversation { Choice: MoreChoice.Play } => desk.Play(Lifter!),
        MoreConversation { Choice: MoreChoice.Calendar } => desk.Calendar(Lifter!),
        MoreConversation { Choice: MoreChoice.Away } => desk.Away(Lifter!),
        RestDayConversation { Choice: RestDayChoice.CheckIn } or MoreConversation { Choice: MoreChoice.CheckIn }
            or StandingConversation { Choice: BodyChoice.CheckIn } => desk.CheckIn(Lifter!),
        RestDayConversation { Choice: RestDayChoice.BodyPage } or MoreConversation { Choice: MoreChoice.Body } => desk.Body(Lifter!),
        CheckInConversation checkIn => desk.CheckedIn(Lifter!, checkIn),
        StandingConversation { Choice: BodyChoice.Profile } => desk.Profile(Lifter!),
        StandingConversation => desk.Today(Lifter!),
        ProfileConversation { Profile: { } told } => Told(told),
        MoreConversation { Choice: MoreChoice.LookBack } or RestDayConversation { Choice: RestDayChoice.LookBack } or TodayConversation { LooksBack: true } => desk.LookBack(Lifter!),
        LookBackConversation => desk.Today(Lifter!),
        MoreConversation { Choice: MoreChoice.Kit } => desk.Kit(),
        KitConversation kit => desk.Kit(Lifter!, kit),
        MoreConversation => desk.Within(Lifter!, null),
        LessTimeConversation less => desk.Within(Lifter!, less.Minutes),
        CalendarConversation => desk.Today(Lifter!),
        AwayConversation { Choice: { } choice } => desk.Away(Lifter!, choice),
        RestDayConversation { Choice: RestDayChoice.TrainAnyway } => desk.TrainAnyway(Lifter!),
        RestDayConversation { Choice: RestDayChoice.WeekPage } => desk.Week(Lifter!),
        RestDayConversation { Choice: RestDayChoice.CalendarPage } => desk.Calendar(Lifter!),
        RestDayConversation { Choice: RestDayChoice.AwayPage } => desk.Away(Lifter!),
        RestDayConversation { Choice: RestDayChoice.KitPage } => desk.Kit(),
        RestDayConversation { Choice: RestDayChoice.Settings } => desk.Today(Lifter!),
        WeekConversation => desk.Today(Lifter!),
        UnwrittenConversation { Choice: UnwrittenChoice.GoBack } => GoBack(),
        UnwrittenConversation { Choice: UnwrittenChoice.CopyTo copy } => rescue.Ask(left!, copy.Place),
        UnwrittenConversation { Choice: UnwrittenChoice.LeaveWithout } => GiveUp(),
        _ => null,
    };

    private TrainingVisit GoBack()
    {
        var session = left!;
        left = null;
        session.GoOn();
        return session;
    }

    private IConversation? GiveUp()
    {
        left!.GiveUp();
        return null;
    }

    private IConversation Mended(LocalDate today)
    {
        gym.Clock.Mend(today, gym.Zone, doubt!.Last);
        shownOn = gym.Today;
        return AtTheDoor();
    }

    private IConversation Told(BodyProfile profile)
    {
        Lifter = desk.Keep(Lifter!, profile);
        return Lifter.Body.Hidden ? desk.Today(Lifter) : desk.Body(Lifter);
    }

    private IConversation Join(SetUpAnswers answers)
    {
        Lifter = desk.Join(answers, joining);
        return desk.Today(Lifter);
    }
}
