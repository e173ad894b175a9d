using NodaTime;
using RackSide.Files;
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
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Racks;
using RackSide.Training.Schedule;
using RackSide.Training.Sessions;
using RackSide.Training.Summary;

namespace RackSide.Visits;

/// <summary>Opens the conversations of a stay, each from what the gym knows at that moment, and keeps what they settle.</summary>
internal sealed class Desk
{
    private readonly Gym gym;
    private TodaysPlan? offered;
    private TodaysPlan? whole;
    private int lookedAt;
    private LocalDate offeredOn;

    /// <summary>A desk in a gym.</summary>
    public Desk(Gym gym)
    {
        this.gym = gym;
        Sharing = new SharingDesk(gym, Setting, Begun);
    }

    /// <summary>The door to a bar shared by two.</summary>
    public SharingDesk Sharing { get; }

    /// <summary>The first start, or somebody who joins a gym that is set up.</summary>
    public SetUpConversation SetUp(bool joining = false) => new(gym.Rules?.Kit.Unit ?? FirstGuess.Unit(), gym.Folders.GymFile, joining);

    /// <summary>Somebody joins: the lifter is kept, and at the first start the house rules.</summary>
    public Lifter Join(SetUpAnswers answers, bool joining = false)
    {
        if (joining && gym.Rules is not null)
        {
            return Keep(answers, NewKey());
        }

        gym.Keep(new HouseRules(answers.ToKit(), answers.TrainingDays, Sound: true)
        {
            Zone = gym.Rules?.Zone,
            Screen = gym.Rules?.Screen ?? new(),
            AlarmCommand = gym.Rules?.AlarmCommand ?? [],
            WeekStarts = gym.WeekStarts,
        });
        return Keep(answers, "first");
    }

    private Lifter Keep(SetUpAnswers answers, string key)
    {
        var lifter = gym.Keyed(new Lifter(
            key, answers.Name, answers.MassUnit, gym.Clock.GetCurrentInstant(), answers.CautionsRead, answers.AvoidInverted));
        gym.Logbook.Keep(lifter);
        return lifter;
    }

    private string NewKey()
    {
        var taken = gym.Logbook.Lifters().Select(l => l.Key).ToHashSet();
        return Enumerable.Range(taken.Count + 1, WhoConversation.Most + 1).Select(n => $"lifter-{n}").First(key => !taken.Contains(key));
    }

    /// <summary>The clock cannot be believed: the lifter is asked for the date.</summary>
    public ClockConversation AskForTheDate(ClockDoubt doubt) => new(gym.Today, doubt.Last?.InZone(gym.Zone).Date, doubt.Behind);

    /// <summary>Today: its plan, or that it is a rest day.</summary>
    public IConversation Today(Lifter lifter) => Today(lifter, done: null);

    /// <summary>An extra session on a rest day.</summary>
    public IConversation TrainAnyway(Lifter lifter)
    {
        var history = gym.Recent(lifter);
        return Offer(gym.TodaysPlan(lifter, DueRule.Extra(gym.Plan, history.Days, gym.Today, Past.Away(history))));
    }

    /// <summary>A check-in.</summary>
    public CheckInConversation CheckIn(Lifter lifter)
    {
        var on = gym.Today;
        return new(on, lifter.Unit, weight => new CheckIns(gym, lifter).Doubt(weight, on));
    }

    /// <summary>What a check-in told is kept, then today again.</summary>
    public IConversation CheckedIn(Lifter lifter, CheckInConversation checkIn)
    {
        var written = checkIn.Left ? "" : new CheckIns(gym, lifter).Keep(checkIn.Answers, checkIn.On);
        return Today(lifter, written.Length > 0 ? "check-in written" : null);
    }

    /// <summary>The page of the body.</summary>
    public StandingConversation Body(Lifter lifter) => new(new CheckIns(gym, lifter).Standing);

    /// <summary>What the formulas want to know.</summary>
    public ProfileConversation Profile(Lifter lifter) => new(lifter.Body, gym.Today, lifter.Unit, new CheckIns(gym, lifter).Doubt);

    /// <summary>What was told for the formulas is kept.</summary>
    public Lifter Keep(Lifter lifter, BodyProfile profile) => profile == lifter.Body ? lifter : new CheckIns(gym, lifter).Keep(profile);

    /// <summary>This week's page.</summary>
    public WeekConversation Week(Lifter lifter) => new(gym.Week(lifter, null, gym.Today));

    /// <summary>The list behind today's plan.</summary>
    public MoreConversation More(Lifter lifter) => new(
        Title(offered!.Day!.Kind, offeredOn),
        offered.Trimmed,
        lifter.Body.Hidden,
        offered.Day.Kind == DayKind.Skills,
        offered.Day.Kind == DayKind.Strength ? [.. Sharing.Partners(lifter).Select(p => p.Name)] : []);

    /// <summary>What this lifter and one of the partners are about to do on one bar.</summary>
    public IConversation Share(Lifter lifter, int partner) => Sharing.Partners(lifter).ElementAtOrDefault(partner) is { } with
        ? Sharing.Share(lifter, with, offered)
        : OfferAgain(offered!);

    /// <summary>Back from the shared bar before it began.</summary>
    public IConversation NotShared(Lifter lifter) => offered is null ? Today(lifter) : OfferAgain(offered);

    /// <summary>How much time there is.</summary>
    public LessTimeConversation LessTime() => new(Title(offered!.Day!.Kind, offeredOn), whole!.Estimate);

    /// <summary>The plan that was offered, in so many minutes; null offers it as it was.</summary>
    public IConversation Within(Lifter lifter, int? minutes) => minutes is { } time
        ? OfferAgain(Planner.Within(whole!, Duration.FromMinutes(time), gym.Catalogue, gym.Kit, gym.Recent(lifter)))
        : OfferAgain(offered!);

    /// <summary>The whole plan again.</summary>
    public IConversation WholePlan() => OfferAgain(whole!);

    /// <summary>The plan with other variants of the same motions; the chance comes from the clock, and each time anew.</summary>
    public IConversation Play(Lifter lifter) => OfferAgain(Planner.Played(
        whole!, (int)(gym.Clock.GetCurrentInstant().ToUnixTimeMilliseconds() % int.MaxValue), gym.Catalogue, gym.Kit, lifter, gym.Recent(lifter), offeredOn));

    /// <summary>The settings of the screen, the sound and the keys.</summary>
    public SettingsConversation Settings() => new(new RackSettings(gym.Rules!.Screen, gym.Rules.Sound), gym.Keep);

    /// <summary>The next four weeks.</summary>
    public CalendarConversation Calendar(Lifter lifter) =>
        new(TrainingCalendar.For(gym.Plan, gym.Recent(lifter), gym.Today, gym.WeekStarts));

    /// <summary>What was done, exercise by exercise; of one only sessions that tell of it are read.</summary>
    public LookBackConversation LookBack(Lifter lifter) => new(
        [.. Training.Planning.LookBack.Exercises(gym.Logbook.Cards(lifter.Key)).Select(gym.Catalogue.Find).OfType<Exercise>()],
        exercise => gym.Course(lifter, exercise));

    /// <summary>What this gym owns.</summary>
    public KitConversation Kit() => new(gym.Kit);

    /// <summary>A change of the kit is written, or dropped; then today by what there is now. Where it cannot be written it stays on the screen.</summary>
    public IConversation Kit(Lifter lifter, KitConversation kit) =>
        kit.Write && gym.ChangeKit(kit.Before, kit.Kit) is { } trouble ? new KitConversation(kit.Before, kit.Kit, trouble) : Today(lifter);

    /// <summary>Days away.</summary>
    public AwayConversation Away(Lifter lifter, string done = "")
    {
        var absences = new Absences(gym, lifter);
        return new(new AwayTexts(gym.Today, [.. absences.Recent.TakeLast(6)], absences.Refusal, done));
    }

    /// <summary>What was said of days away is kept; then the page of them again, or today.</summary>
    public IConversation Away(Lifter lifter, AwayChoice choice)
    {
        var absences = new Absences(gym, lifter);
        switch (choice)
        {
            case AwayChoice.Tell tell:
                absences.Tell(tell.From, tell.Until, tell.For);
                return Away(lifter, "written");
            case AwayChoice.TakeBack take:
                absences.TakeBack(take.Away);
                return Away(lifter, "taken back");
            case AwayChoice.BackAgain:
                absences.Back();
                return Today(lifter);
            default:
                return Today(lifter);
        }
    }

    /// <summary>A set known from elsewhere, for a slot of the plan that was offered.</summary>
    public KnownSetConversation KnownSet(int slot)
    {
        lookedAt = slot;
        return new(gym.Catalogue[offered!.Prescriptions[slot].Exercise], gym.Kit.Unit);
    }

    /// <summary>What was told of such a set is kept; then the same day again, with the load it leads to.</summary>
    public IConversation Know(Lifter lifter, KnownSetConversation known)
    {
        if (known.Told is not var (load, reps))
        {
            return OfferAgain(offered!);
        }

        gym.Logbook.Tell(lifter.Key, new SetKnown(gym.Logbook.NextId(), gym.Clock.GetCurrentInstant(), gym.Today, known.Exercise.Id, reps, load));
        var todays = gym.TodaysPlan(lifter);
        return Offer(todays.Day?.Key == offered!.Day!.Key ? todays : gym.TodaysPlan(lifter, offered.Day));
    }

    /// <summary>The session that was offered begins; it is on disk before its first page is shown, where the disk takes anything.</summary>
    public SessionVisit Begin(Lifter lifter)
    {
        var first = new FirstEntries(gym.Logbook);
        var (record, setting) = Begun(lifter, offered!, first);
        return new SessionVisit(
            record.Facts.Count == 0
                ? Session.Begin(setting, record.Head)
                : Session.Resume(setting, record, gym.Logbook.NextId(), record.Head.Begun),
            gym,
            first.Unwritten);
    }

    private (SessionRecord Record, SessionSetting Setting) Begun(Lifter lifter, TodaysPlan todays, FirstEntries first)
    {
        var head = todays.Head(
            gym.Logbook.NextId(), gym.Clock.GetCurrentInstant(), todays == offered ? offeredOn : gym.Today, gym.Zone.Id, lifter.Key, gym.Plan.Name);
        var setting = gym.Setting(lifter, todays.Day!, todays.Prescriptions);
        first.Write(new SessionEntry.Begun(head));
        var leftOut = todays.NoTimeFor.Select(p => (Fact)new SlotLeftOut(gym.Logbook.NextId(), head.Begun, p.Slot)).ToList();
        leftOut.ForEach(fact => first.Write(new SessionEntry.Added(head.Id, fact)));
        return (new SessionRecord(head, leftOut), setting);
    }

    /// <summary>A session was left open, perhaps with the bar shared: go on, or close it.</summary>
    public ResumeConversation Resume(Lifter lifter, SessionRecord open)
    {
        var sentence = Told(lifter, open);
        return new ResumeConversation(
            Title(open.Head.Kind, open.Date),
            Sharing.Partner(open) is var (with, other) ? $"The bar is shared with {with.Name}. {lifter.Name}: {sentence} {with.Name}: {Stands(with, other)} Both go on, or both are closed." : sentence);
    }

    // Where it was begun matters at a rack that did not see it, and so does a second one that was left open.
    private string Told(Lifter lifter, SessionRecord open)
    {
        var twice = GymFold.OpenTwice(gym.Logbook.Cards(lifter.Key)).Where(c => c.Id != open.Head.Id).ToList();
        var elsewhere = gym.Logbook is LiteLogbook { Share: { Gym: not null } share } && share.Rack != open.Head.Id.Rack ? $" It was begun at rack {open.Head.Id.Rack}." : "";
        return Stands(lifter, open) + elsewhere
            + (twice.Count == 0 ? "" : $" Another is open too, of {twice[0].Date.Short()}, begun at rack {twice[0].Id.Rack}: it is asked about next time.");
    }

    /// <summary>The open session goes on at the same set, and with it the one that shares the bar.</summary>
    public IConversation GoOn(Lifter lifter)
    {
        var open = gym.Logbook.Open(lifter.Key)!;
        return Sharing.Partner(open) is { } other
            ? Sharing.GoOn((lifter, open), other)
            : new SessionVisit(Session.Resume(Setting(lifter, open), open, gym.Logbook.NextId(), gym.Clock.GetCurrentInstant()), gym);
    }

    /// <summary>The open session is closed as it is, and with it the one that shares the bar; then today.</summary>
    public IConversation Close(Lifter lifter)
    {
        var open = gym.Logbook.Open(lifter.Key)!;
        var other = Sharing.Partner(open);
        Close(lifter, open);
        if (other is var (with, shared))
        {
            Close(with, shared);
        }

        gym.Logbook.Settle();
        return Today(lifter);
    }

    private void Close(Lifter lifter, SessionRecord open)
    {
        var now = gym.Clock.GetCurrentInstant();
        var place = Place.Of(Setting(lifter, open).Checks, open);
        foreach (var slot in place.Agenda.OfType<SlotItem>().Where(i => !place.IsPast(i)).Select(i => i.Slot).Distinct())
        {
            gym.Logbook.Append(open.Head.Id, new SlotLeftOut(gym.Logbook.NextId(), now, slot));
        }

        gym.Logbook.Append(open.Head.Id, new SessionClosed(gym.Logbook.NextId(), now));
    }

    private string Stands(Lifter lifter, SessionRecord open)
    {
        var next = Place.Of(Setting(lifter, open).Checks, open).Current;
        var last = open.Facts.Count > 0 ? open.Facts[^1].At : open.Head.Begun;
        return ResumeText.Sentence(gym.Catalogue, next, last.InZone(gym.Zone).LocalDateTime);
    }

    private SessionSetting Setting(Lifter lifter, SessionRecord open)
    {
        var day = gym.Plan.Day(open.Head.DayKey) ?? new TrainingDay(open.Head.DayKey, open.Head.DayName, open.Head.Kind, []);
        return gym.Setting(lifter, day, open.Head.Prescriptions, open.Head.Id);
    }

    private IConversation Today(Lifter lifter, string? done)
    {
        var todays = gym.TodaysPlan(lifter);
        return todays.Due.Kind == DueKind.Train ? Offer(todays, done) : RestDay(lifter, todays, done);
    }

    private TodayConversation Offer(TodaysPlan todays, string? done = null)
    {
        (whole, offeredOn) = (todays, gym.Today);
        return OfferAgain(todays, done);
    }

    private TodayConversation OfferAgain(TodaysPlan todays, string? done = null)
    {
        offered = todays;
        var needs = $"{PlanTexts.Needs(todays)} {PlanTexts.Instead(todays)}".Trim();
        return new TodayConversation(
            new TodayTexts(Title(todays.Day!.Kind, offeredOn), todays.Due.Why, todays.Prescriptions, todays.Estimate, needs, done is null ? gym.Report ?? "" : $"{done}.") { StandIns = todays.StandIns },
            gym.Catalogue,
            lookedAt < todays.Prescriptions.Count ? lookedAt : 0)
        {
            Shared = () => gym.Sharing?.Word,
        };
    }

    private RestDayConversation RestDay(Lifter lifter, TodaysPlan todays, string? done)
    {
        var due = todays.Due;
        var next = Planner.For(gym.Plan, gym.Catalogue, gym.Kit, lifter, gym.Recent(lifter), due.Next, due.NextDay);
        return new RestDayConversation(new RestDayTexts(
            due.Kind switch { DueKind.DoneToday => "DONE FOR TODAY", DueKind.Away => "AWAY", _ => "REST DAY" },
            gym.Today.Short(),
            due.Why,
            $"{due.Next.Short()}, {due.NextDay.Name}",
            string.Join(", ", next.Prescriptions.Select(p => PlanTexts.Short(gym.Catalogue, p))),
            lifter.Body.Hidden,
            done));
    }

    private static string Title(DayKind kind, LocalDate date) => $"{(kind == DayKind.Strength ? "STRENGTH DAY" : "SKILLS DAY")}  {date.Short()}";
}
