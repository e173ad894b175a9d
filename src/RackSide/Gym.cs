using System.Globalization;
using System.Text;
using NodaTime;
using RackSide.Arrivals;
using RackSide.Commands;
using RackSide.Files;
using RackSide.Kiosk;
using RackSide.Logbook;
using RackSide.Pages.Settings;
using RackSide.Places;
using RackSide.Racks;
using RackSide.Time;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Racks;
using RackSide.Training.Safety;
using RackSide.Training.Schedule;
using RackSide.Training.Sessions;
using RackSide.Training.Summary;

namespace RackSide;

/// <summary>An opened gym: its rules, its plan, its logbook, and the clock on its wall.</summary>
internal sealed partial class Gym : IDisposable
{
    // More weeks than a chart has columns, at two sessions a week.
    private const int MostLookedBackAt = 160;

    private readonly Plan plan;
    private readonly bool planIsNamed;
    private readonly IDisposable? closing;
    private readonly DateTimeZone? abroad;
    private long backedUp;
    private bool closed;
    private Plan? followed;

    private Gym(
        Folders folders, IClock clock, Catalogue catalogue, Plan plan, bool planIsNamed, HouseRules? rules, ILogbook? logbook, IDisposable? closing, DateTimeZone? abroad)
    {
        (this.closing, this.abroad, this.planIsNamed) = (closing, abroad, planIsNamed);
        (Folders, Clock, Catalogue, this.plan, Rules, Logbook) = (folders, new MendedClock(clock), catalogue, plan, rules, logbook ?? new NoLogbook());
        Report = logbook switch { LiteLogbook own => own.Report.Sentence, LogbookSnapshot seen => Seen(seen), _ => null };
    }

    /// <summary>Where its files lie.</summary>
    public Folders Folders { get; }

    /// <summary>The clock.</summary>
    public MendedClock Clock { get; }

    /// <summary>The time zone of this stay: the one a traveller named, or the gym's, or the machine's.</summary>
    public DateTimeZone Zone => abroad ?? Rules?.Zone ?? SystemTime.Zone();

    /// <summary>The weekday that a shown week begins with.</summary>
    public IsoDayOfWeek WeekStarts => Rules?.WeekStarts ?? IsoDayOfWeek.Monday;

    /// <summary>All exercises.</summary>
    public Catalogue Catalogue { get; }

    /// <summary>The house rules; null before the first set-up.</summary>
    public HouseRules? Rules { get; private set; }

    /// <summary>The logbook.</summary>
    public ILogbook Logbook { get; }

    /// <summary>What opening the logbook has to tell; null where that is nothing.</summary>
    public string? Report { get; }

    /// <summary>A sentence where the log file takes nothing more until it is opened again; null where all is well.</summary>
    public string? Trouble => (Logbook as LiteLogbook)?.Trouble;

    /// <summary>Where the logbook's backups lie.</summary>
    public string BackupFolder => Path.Combine(Folders.Data, Backups.FolderName);

    /// <summary>Today's date in the gym.</summary>
    public LocalDate Today => Clock.GetCurrentInstant().InZone(Zone).Date;

    /// <summary>Why the clock cannot be believed, by what is written here; null where it can.</summary>
    public ClockDoubt? Doubt() => ClockDoubt.Of(Logbook.LastEntry, Clock.GetCurrentInstant());

    /// <summary>The plan on the weekdays of this gym, where they are as many as the plan has; or rolling, where the gym's days roll.</summary>
    public Plan Plan => Rules switch
    {
        { Rolls: true } => Followed.AsRolling(),
        { } rules when !Followed.Rolls && rules.TrainingDays.Count == Followed.Week.Count => Followed.On(rules.TrainingDays),
        _ => Followed,
    };

    private Plan Followed => followed ?? plan;

    /// <summary>From here on the plan is the one this lifter chose, or the gym's own; one named on the command line is for everybody.</summary>
    /// <returns>A sentence where the chosen one cannot be read any more, so that the gym's own is taken; else null.</returns>
    public string? TrainBy(Lifter lifter)
    {
        var read = lifter.Plan is { } name && !planIsNamed ? PlansHere.Read(Folders, name, Catalogue) : null;
        followed = read?.Value;
        return read is { Value: null } ? $"{lifter.Name}'s plan {lifter.Plan} cannot be used, so the gym's is: {read.Mistakes[0]}" : null;
    }

    /// <summary>What the gym owns; a default kit before the first set-up.</summary>
    public GymKit Kit => Rules?.Kit ?? KitDefaults.For(MassUnit.Kilogram);

    /// <summary>Opens a gym.</summary>
    /// <param name="folders">Where its files lie.</param>
    /// <param name="planFile">A coach's plan file, or null for the one that comes with the program.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="begin">Whether a logbook is begun where there is none; a command that only reads makes nothing on disk.</param>
    /// <param name="closing">Let go of when the gym has closed, or null.</param>
    /// <param name="abroad">The time zone a traveller trains in; null for the gym's own.</param>
    /// <param name="looks">Whether the logbook is only looked at, so that where it is open elsewhere its copy will do.</param>
    /// <exception cref="Refusal">A file has mistakes, or the logbook cannot be opened.</exception>
    public static Gym Open(
        Folders folders, string? planFile, IClock clock, bool begin = true, IDisposable? closing = null, DateTimeZone? abroad = null, bool looks = false)
    {
        // What comes inside the program takes as long to read as a logbook to open, so it is read meanwhile.
        var inside = Task.Run(() => CatalogueFile.Read() is var all ? (All: all, BuiltIn: PlanFile.Default(all)) : default);
        var plan = planFile is null
            ? null
            : Good(PlanFile.ReadFrom(planFile, inside.GetAwaiter().GetResult().All), File.Exists(planFile) ? ExitCode.Data : ExitCode.NoInput);
        var rules = RulesIn(folders);
        var logbook = !begin && !LiteLogbook.IsIn(folders.Data) ? null : looks ? LogbookDoor.Look(folders.Data, clock) : LogbookDoor.Open(folders.Data, clock);
        var (catalogue, builtIn) = inside.GetAwaiter().GetResult();
        var gym = new Gym(folders, clock, catalogue, plan ?? builtIn, planFile is not null, rules, logbook, closing, abroad);
        (logbook as LiteLogbook)?.Clock = gym.Clock;
        gym.EraseErased();
        return gym;
    }

    /// <summary>The same gym by another clock, to look ahead with: it is closed with this one, and nothing is written through it.</summary>
    public Gym On(IClock clock) => new(Folders, clock, Catalogue, plan, planIsNamed, Rules, Logbook, closing: null, abroad) { followed = followed };

    /// <summary>The lifter of that key, name or first name nobody else has, or the first who joined; null where nobody has.</summary>
    /// <exception cref="Refusal">Nobody of that name trains here.</exception>
    public Lifter? Lifter(string? name = null) => name is null ? Logbook.Lifters().FirstOrDefault() : Named(name, "--lifter");

    /// <summary>The lifter of that key, name or first name nobody else has.</summary>
    /// <param name="name">What was typed.</param>
    /// <param name="where">Where it was typed, for the sentence.</param>
    /// <exception cref="Refusal">Nobody of that name trains here.</exception>
    public Lifter Named(string name, string where)
    {
        var lifters = Logbook.Lifters();
        if (lifters.Count == 0)
        {
            throw new Refusal(ExitCode.Usage, $"{where}: nobody has joined yet, so there is no \"{name}\"; start rackside without it");
        }

        return lifters.FirstOrDefault(l => l.Key == name || string.Equals(l.Name, name, StringComparison.OrdinalIgnoreCase))
            ?? (lifters.Where(l => string.Equals(l.Name.Split(' ')[0], name, StringComparison.OrdinalIgnoreCase)).ToList() is [var one] ? one : null)
            ?? throw new Refusal(ExitCode.Usage, $"{where}: nobody here is called \"{name}\"; here train: {string.Join(", ", lifters.Select(l => l.Name))}");
    }

    /// <summary>A lifter who is new here, with the key that facts use: one that is the same on every rack, where there are several.</summary>
    public Lifter Keyed(Lifter lifter) => Logbook is LiteLogbook { Share.Joined: true } ? lifter with { Key = GymKey.Of(lifter) } : lifter;

    /// <summary>The same, for what only somebody who joined can do.</summary>
    /// <exception cref="Refusal">Nobody of that name trains here, or nobody has joined.</exception>
    public Lifter Joined(string? name) =>
        Lifter(name) ?? throw new Refusal(ExitCode.Usage, "nobody has joined yet; start rackside to set up");

    /// <summary>Takes back what was told outside a session.</summary>
    public void TakeBack(Lifter lifter, Fact told) =>
        Logbook.Tell(lifter.Key, new FactStruck(Logbook.NextId(), Clock.GetCurrentInstant(), told.Id));

    /// <summary>What a lifter has done, every session of it read.</summary>
    public TrainingHistory History(Lifter lifter) => new(Logbook.Sessions(lifter.Key), Logbook.Told(lifter.Key));

    /// <summary>The same, read as far back as a day's plan looks.</summary>
    /// <param name="lifter">Who.</param>
    /// <param name="but">A session that is passed over; null for none.</param>
    public TrainingHistory Recent(Lifter lifter, FactId? but = null) => Read(lifter, c => c.Id != but, LookBack.ForPlan);

    /// <summary>What a lifter has done of an exercise: the newest sessions that tell of it read, the records by all their cards.</summary>
    public ExerciseCourse Course(Lifter lifter, Exercise exercise)
    {
        var cards = LookBack.Of(Logbook.Cards(lifter.Key), exercise.Id);
        var newest = cards.TakeLast(MostLookedBackAt).Select(c => c.Id).ToHashSet();
        var history = new TrainingHistory(Logbook.Sessions(lifter.Key, newest));
        return new ExerciseCourse(exercise, [.. history.Of(exercise.Id)], Logbook.WeighIns(lifter.Key))
        {
            Records = [.. new ExerciseAsked(exercise.Name, exercise, null).Records(Catalogue, cards).SelectMany(r => r.Records)],
            Earlier = cards.Count - newest.Count,
        };
    }

    /// <summary>What today asks of a lifter.</summary>
    public TodaysPlan TodaysPlan(Lifter lifter, TrainingDay? asked = null) =>
        Planner.For(Plan, Catalogue, Kit, lifter, Recent(lifter), Today, asked);

    /// <summary>The week of a date, with a session that is still being held.</summary>
    public WeekSummary Week(Lifter lifter, SessionRecord? held, LocalDate date)
    {
        var before = Read(lifter, c => c.Id != held?.Head.Id, cards => LookBack.ForWeek(cards, date));
        var history = held is null ? before : new TrainingHistory([.. before.Sessions, held], before.ToldOutside) { Earlier = before.Earlier };
        return WeekSummary.For(Plan, Catalogue, Kit, lifter, history, Logbook.WeighIns(lifter.Key), date);
    }

    /// <summary>A past week as it stood on its last day, so that what came later does not change it.</summary>
    public WeekSummary WeekUntil(Lifter lifter, LocalDate last)
    {
        var history = Read(lifter, c => c.Date <= last, cards => LookBack.ForWeek(cards, last));
        return WeekSummary.For(Plan, Catalogue, Kit, lifter, history, [.. Logbook.WeighIns(lifter.Key).Where(w => w.Date <= last)], last);
    }

    /// <summary>What a session of a training day is held against.</summary>
    public SessionSetting Setting(Lifter lifter, TrainingDay day, IReadOnlyList<Prescription> prescriptions, FactId? held = null)
    {
        var before = Recent(lifter, held);
        return new SessionSetting
        {
            Day = day,
            Catalogue = Catalogue,
            Loads = new KitLoads(Kit),
            Lifter = lifter,
            WeighIns = Logbook.WeighIns(lifter.Key),
            Before = before,
            Pace = LifterPace.Of(before),
            LeadIn = Rules?.LeadIn ?? Duration.FromSeconds(5),
            Reach = Rules?.WalkToKey ?? Duration.FromSeconds(2),
            Checks = BeforeLoading.For(day.Kind, prescriptions.Select(p => Catalogue[p.Exercise]), Kit),
        };
    }

    /// <summary>What the logbook holds now, with the file of house rules; null where there is none.</summary>
    public LogbookSnapshot? Snapshot() => Logbook switch
    {
        LiteLogbook own => own.Snapshot(RulesAtRest()),
        LogbookSnapshot seen => seen.WithHouseRules(RulesAtRest()),
        _ => null,
    };

    /// <summary>Makes a backup where something was written since the last; the older ones are thinned by the house rules.</summary>
    /// <returns>A sentence where it could not be made; else null.</returns>
    public string? BackUp()
    {
        var most = (Rules?.BackupMegabytes ?? HouseRules.UsualBackupMegabytes) * 1_000_000L;
        if (closing is not null || most == 0 || Logbook is not LiteLogbook own || own.Writes == backedUp)
        {
            return null;
        }

        backedUp = own.Writes;
        try
        {
            new Backups(BackupFolder).Rotate(own.Snapshot(RulesAtRest()), Today, most);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"{e.Message.TrimEnd('.')}; the logbook itself is whole";
        }
    }

    /// <summary>The exchange with the other racks of the gym; null on a rack alone, which has nothing of it.</summary>
    public BackgroundSync? Sharing { get; private set; }

    /// <summary>Starts the exchange with the other racks, where this rack has joined a gym.</summary>
    public void StartSharing(Func<string, string?> environment)
    {
        if (Logbook is LiteLogbook { Share.Joined: true } own && GymServerFile.Read(Folders) is { } server)
        {
            Sharing = new BackgroundSync(own, new GymLink(server, environment), TimeProvider.System);
        }
    }

    /// <summary>Takes off this disk what is left of somebody who was erased on another rack; nobody may train meanwhile.</summary>
    public void EraseErased()
    {
        if (Logbook is LiteLogbook { HoldsErased: true } own)
        {
            KeptPages.Forget(Folders);
            own.EraseErased();
        }
    }

    /// <summary>Closes it, with a backup where something was written.</summary>
    public void Dispose()
    {
        if (!closed)
        {
            closed = true;
            Sharing?.Dispose();
            BackUp();
            Logbook.Dispose();
            closing?.Dispose();
        }
    }

    private TrainingHistory Read(
        Lifter lifter, Func<SessionCard, bool> among, Func<IReadOnlyList<SessionCard>, IReadOnlySet<FactId>> needed)
    {
        List<SessionCard> cards = [.. Logbook.Cards(lifter.Key).Where(among)];
        var which = needed(cards);
        return new TrainingHistory(Logbook.Sessions(lifter.Key, which), Logbook.Told(lifter.Key))
        {
            Earlier = [.. cards.Where(c => !which.Contains(c.Id))],
        };
    }

    private static T Good<T>(Reading<T> reading, int code)
        where T : class => reading.Value ?? throw new Refusal(code, string.Join(Environment.NewLine, reading.Mistakes));

    private string Seen(LogbookSnapshot seen) => seen.Newest is { } newest
        ? $"the logbook is open in another window; this is from its copy and journal, as of {newest.InZone(Zone).Date.Shown()}, {newest.InZone(Zone).ToString("HH:mm", CultureInfo.InvariantCulture)}, its last entry"
        : "the logbook is open in another window; this is from its copy, which holds no entry yet";
}
