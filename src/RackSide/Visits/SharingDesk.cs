using NodaTime;
using RackSide.Logbook;
using RackSide.Pages.Sharing;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;
using RackSide.Training.Sessions;

namespace RackSide.Visits;

/// <summary>The door to a shared bar: who can share it today, what both are about to do, and both sessions begun or gone on with.</summary>
/// <param name="gym">The gym.</param>
/// <param name="settings">What an open session is held against.</param>
/// <param name="begin">Begins a session: head, first facts and setting, on disk where that takes them.</param>
internal sealed class SharingDesk(
    Gym gym,
    Func<Lifter, SessionRecord, SessionSetting> settings,
    Func<Lifter, TodaysPlan, FirstEntries, (SessionRecord Record, SessionSetting Setting)> begin)
{
    private (Lifter Lifter, TodaysPlan Plan)[] asked = [];

    /// <summary>Who was invited to share the bar; null before <see cref="Share"/>.</summary>
    public Lifter? Invited => asked is [_, var two] ? two.Lifter : null;

    /// <summary>The other lifters who have a strength day due today, or one that is still open.</summary>
    public IReadOnlyList<Lifter> Partners(Lifter lifter) =>
        [.. gym.Logbook.Lifters().Where(l => l.Key != lifter.Key && WhyNot(l, lifter) is null)];

    /// <summary>The lifter of that name, who shares the bar with another.</summary>
    /// <exception cref="Refusal">Nobody of that name trains here, it is the same one, or one of them cannot today.</exception>
    public Lifter With(Lifter? lifter, string name)
    {
        var with = gym.Named(name, "--with");
        var why = lifter is null || lifter.Key == with.Key ? $"{with.Name} is who trains; name another lifter" : WhyNot(lifter, lifter) ?? WhyNot(with, lifter);
        return why is null ? with : throw new Refusal(ExitCode.Usage, $"--with: {why}");
    }

    /// <summary>What both are about to do.</summary>
    /// <param name="one">Who trains.</param>
    /// <param name="two">With whom.</param>
    /// <param name="offered">The first lifter's plan where it was looked at, or made shorter, before; null for the plan as it is.</param>
    public ShareConversation Share(Lifter one, Lifter two, TodaysPlan? offered = null)
    {
        asked = [(one, offered ?? gym.TodaysPlan(one)), (two, ByPlanOf(two, one, () => gym.TodaysPlan(two)))];
        return new([.. asked.Select(a => Line(a.Lifter, a.Plan))]);
    }

    /// <summary>Both sessions, begun now or gone on with; that they share is on disk before the first page is shown.</summary>
    public SharedVisit Begin()
    {
        var first = new FirstEntries(gym.Logbook);
        var both = asked.Select(a => ByPlanOf(a.Lifter, asked[0].Lifter, () => Opened(a.Lifter, a.Plan, first))).ToList();
        var now = gym.Clock.GetCurrentInstant();
        return Visit([.. both.Select((b, i) => (Told(b.Record, both[1 - i].Record.Head.Id, now, first), b.Setting))], first.Unwritten);
    }

    /// <summary>The lifter whose open session shares the bar with this one, each saying so of the other; null where there is none.</summary>
    public (Lifter Lifter, SessionRecord Open)? Partner(SessionRecord open) => open.SharedWith is not { } with ? null
        : gym.Logbook.Lifters().Select(l => (Lifter: l, Open: gym.Logbook.Open(l.Key)))
            .Where(l => l.Open?.Head.Id == with && l.Open.SharedWith == open.Head.Id)
            .Select(l => ((Lifter, SessionRecord)?)(l.Lifter, l.Open!))
            .FirstOrDefault();

    /// <summary>Two open sessions that share the bar go on.</summary>
    public SharedVisit GoOn((Lifter Lifter, SessionRecord Open) one, (Lifter Lifter, SessionRecord Open) two) =>
        Visit([.. new[] { one, two }.Select(x => (x.Open, ByPlanOf(x.Lifter, one.Lifter, () => settings(x.Lifter, x.Open))))], []);

    private (SessionRecord Record, SessionSetting Setting) Opened(Lifter lifter, TodaysPlan plan, FirstEntries first) =>
        Open(lifter) is { } open ? (open, settings(lifter, open)) : begin(lifter, plan, first);

    /// <summary>Asks the gym by this lifter's own plan; afterwards it is that of the one whose stay it is again.</summary>
    private T ByPlanOf<T>(Lifter lifter, Lifter stays, Func<T> ask)
    {
        gym.TrainBy(lifter);
        try
        {
            return ask();
        }
        finally
        {
            gym.TrainBy(stays);
        }
    }

    private SharedVisit Visit((SessionRecord Record, SessionSetting Setting)[] both, IReadOnlyList<SessionEntry> unwritten)
    {
        var (next, now) = (gym.Logbook.NextId(), gym.Clock.GetCurrentInstant());
        var sessions = both.OrderBy(b => b.Record.Head.Id).Select(b => Session.Resume(b.Setting, b.Record, next, now)).ToList();
        return new SharedVisit(TwoOnOneBar.Of(sessions[0], sessions[1]), gym, unwritten);
    }

    private SessionRecord Told(SessionRecord record, FactId other, Instant now, FirstEntries first)
    {
        var shared = new BarShared(gym.Logbook.NextId(), now, other);
        first.Write(new SessionEntry.Added(record.Head.Id, shared));
        return record with { Facts = [.. record.Facts, shared] };
    }

    private SessionRecord? Open(Lifter lifter) => gym.Logbook.Open(lifter.Key);

    /// <summary>Why a lifter cannot share a bar today, in a sentence; null where that can be.</summary>
    private string? WhyNot(Lifter lifter, Lifter stays) => WhyNot(lifter, ByPlanOf(lifter, stays, () => gym.TodaysPlan(lifter)));

    private string? WhyNot(Lifter lifter, TodaysPlan plan) => Open(lifter) is { } open
        ? open.Head.Kind == DayKind.Strength ? null : $"{lifter.Name}'s {open.Head.DayName.ToLowerInvariant()} is still open; close it first"
        : plan is { Due.Kind: DueKind.Train, Day.Kind: DayKind.Strength } ? null
        : $"{lifter.Name} has no strength day today; next is {plan.Due.Next.Shown()}, {plan.Due.NextDay.Name.ToLowerInvariant()}";

    private string Line(Lifter lifter, TodaysPlan plan) => Open(lifter) is not null
        ? $"{lifter.Name}: goes on with the session left open"
        : $"{lifter.Name}: {string.Join(", ", plan.Prescriptions.Take(4).Select(p => PlanTexts.Short(gym.Catalogue, p)))}{(plan.Prescriptions.Count > 4 ? ", and so on" : "")}";
}
