using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Summary;

/// <summary>The week page as a value: what was done, where each lift stands, and what comes next.</summary>
public sealed record WeekSummary
{
    /// <summary>The ISO week.</summary>
    public required IsoWeek Week { get; init; }

    /// <summary>Its training days done, oldest first: date and name.</summary>
    public required IReadOnlyList<(LocalDate Date, string Name)> Done { get; init; }

    /// <summary>How many training days the plan has in a week.</summary>
    public required int Planned { get; init; }

    /// <summary>The loaded exercises of the next strength day, in its order.</summary>
    public required IReadOnlyList<LiftLine> Lifts { get; init; }

    /// <summary>Sets, holds and totals of the week.</summary>
    public required WeekWork Work { get; init; }

    /// <summary>Working sets by muscle group, an estimate.</summary>
    public IReadOnlyList<MuscleSets> Muscles { get; init; } = [];

    /// <summary>Push against pull, in working sets.</summary>
    public PushPull Balance { get; init; } = new(0, 0);

    /// <summary>The week's volume load, one mass for each unit that was loaded.</summary>
    public IReadOnlyList<Mass> VolumeLoad { get; init; } = [];

    /// <summary>The body's own mass moved in reps, an estimate; null where none can be told.</summary>
    public Mass? BodyCarried { get; init; }

    /// <summary>Body weight, or null where nobody was weighed this week.</summary>
    public BodyLine? Body { get; init; }

    /// <summary>Sleep, or null where no night of the week was told.</summary>
    public SleepLine? Sleep { get; init; }

    /// <summary>At most two plain sentences.</summary>
    public required IReadOnlyList<string> Conclusions { get; init; }

    /// <summary>What the first weeks bring, or that the fast steps of a beginning are over; empty in between.</summary>
    public IReadOnlyList<string> Stage { get; init; } = [];

    /// <summary>The next training date after today, or today where a day is still due.</summary>
    public required LocalDate Next { get; init; }

    /// <summary>The training day of <see cref="Next"/>.</summary>
    public required TrainingDay NextDay { get; init; }

    /// <summary>The same in about twelve plain lines of at most 72 characters, for a terminal, a pipe or a screen reader.</summary>
    public IReadOnlyList<string> Lines => PlainLines.Of(this);

    /// <summary>The same in at most twelve lines of at most fifty characters: what is printed when the screen is left.</summary>
    public IReadOnlyList<string> Few => FewLines.Of(this);

    /// <summary>The summary of the week that <paramref name="today"/> falls in.</summary>
    /// <param name="plan">The plan, on the lifter's weekdays.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="kit">What the gym owns.</param>
    /// <param name="lifter">Whose week it is.</param>
    /// <param name="history">All the lifter's sessions.</param>
    /// <param name="weighIns">The lifter's body weights.</param>
    /// <param name="today">The date.</param>
    public static WeekSummary For(
        Plan plan,
        Catalogue catalogue,
        GymKit kit,
        Lifter lifter,
        TrainingHistory history,
        IReadOnlyList<WeighIn> weighIns,
        LocalDate today)
    {
        var week = IsoWeek.Of(today);
        var gym = new KitLoads(kit);
        var due = Planner.For(plan, catalogue, gym, lifter, history, today).Due;
        var lifts = LiftLines.Of(NextStrength(plan, catalogue, gym, lifter, history, today), catalogue, history);
        var body = lifter.Body.Hidden ? null : BodyLine.Of(weighIns, week, lifter.Unit);
        var sessions = history.Sessions.Where(s => week.Holds(s.Date)).ToList();
        var done = sessions.Where(s => s.Trained).ToList();
        return new WeekSummary
        {
            Week = week,
            Done = [.. done.Select(s => (s.Date, s.Head.DayName))],
            Planned = plan.DaysAWeek,
            Lifts = lifts,
            Work = WeekWork.Of(week, history, catalogue),
            Muscles = MuscleSets.Of(sessions, catalogue),
            Balance = PushPull.Of(sessions, catalogue),
            VolumeLoad = Summary.VolumeLoad.Of(sessions, catalogue, weighIns),
            BodyCarried = Summary.BodyCarried.Of(sessions, catalogue, weighIns),
            Body = body,
            Sleep = lifter.Body.Hidden ? null : SleepLine.Of(history.Told, week),
            Conclusions = Conclusion.Of(lifts, done.Count, body),
            Stage = EarlyWeeks.Line(history, today) is { } early ? [early] : MovingOn.Lines(history, catalogue, kit, today),
            Next = due.Day is null ? due.Next : today,
            NextDay = due.Day ?? due.NextDay,
        };
    }

    private static IReadOnlyList<Prescription> NextStrength(
        Plan plan, Catalogue catalogue, KitLoads gym, Lifter lifter, TrainingHistory history, LocalDate today) =>
        DueRule.NextStrength(plan, history.Days, today, Past.Away(history)) is var (date, day)
            ? Planner.Prescriptions(day, catalogue, gym, lifter, history, date)
            : [];
}
