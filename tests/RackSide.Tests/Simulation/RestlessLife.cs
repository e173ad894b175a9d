using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Summary;

namespace RackSide.Simulation;

/// <summary>
/// An invented lifter to whom everything happens that a history can hold, more often than to anybody real. Each day's plan is
/// made twice: from all sessions, and from those that <see cref="LookBack"/> names with the cards of the others.
/// </summary>
internal sealed class RestlessLife(int seed, bool rolls)
{
    private const int SeasonDays = 70;

    private static readonly LocalDate First = new(2026, 1, 5);

    private readonly Random chance = new(seed);
    private readonly Plan plan = rolls ? SimulatedYear.Plan.AsRolling() : SimulatedYear.Plan;
    private readonly GymKit kit = KitDefaults.For(MassUnit.Kilogram);
    private readonly Lifter lifter = new("juno", "Juno Petrov", MassUnit.Kilogram, Instant.FromUtc(2026, 1, 1, 12, 0));
    private readonly List<SessionRecord> sessions = [];
    private readonly List<SessionCard> cards = [];
    private readonly List<Fact> told = [];
    private readonly Dictionary<string, int> swapped = [];
    private long sequence;
    private int awayUntil;

    /// <summary>Which sessions are read.</summary>
    public Func<IReadOnlyList<SessionCard>, IReadOnlySet<FactId>> Needed { get; init; } = LookBack.ForPlan;

    public IReadOnlyList<SessionRecord> Sessions => sessions;

    /// <summary>The cards of all sessions.</summary>
    public IReadOnlyList<SessionCard> Cards => cards;

    /// <summary>Which rules have spoken.</summary>
    public HashSet<string> Reasons { get; } = [];

    public IEnumerable<(LocalDate Date, TodaysPlan Whole, TodaysPlan Bounded)> Live(int weeks)
    {
        for (var day = 0; day < 7 * weeks; day++)
        {
            var date = First.PlusDays(day);
            Happen(day, date);
            if (day < awayUntil || chance.Next(12) == 0)
            {
                continue;
            }

            var (whole, bounded) = (Ask(new TrainingHistory(sessions, told), date), Ask(Bounded(Needed), date));
            yield return (date, whole, bounded);
            if (whole.Day is { } training)
            {
                Train(date, training, whole.Prescriptions);
            }
        }
    }

    /// <summary>The page of a week, from all sessions and from those that <see cref="LookBack"/> names for it.</summary>
    public (WeekSummary Whole, WeekSummary Bounded) Week(LocalDate date) =>
        (Week(new TrainingHistory(sessions, told), date), Week(Bounded(all => LookBack.ForWeek(all, date)), date));

    private WeekSummary Week(TrainingHistory history, LocalDate date) =>
        WeekSummary.For(plan, SimulatedYear.Exercises, kit, lifter, history, [], date);

    private TodaysPlan Ask(TrainingHistory history, LocalDate date) => Planner.For(plan, SimulatedYear.Exercises, kit, lifter, history, date);

    private TrainingHistory Bounded(Func<IReadOnlyList<SessionCard>, IReadOnlySet<FactId>> needed)
    {
        var which = needed(cards);
        return new TrainingHistory([.. sessions.Where(s => which.Contains(s.Head.Id))], told)
        {
            Earlier = [.. cards.Where(c => !which.Contains(c.Id))],
        };
    }

    private void Happen(int day, LocalDate date)
    {
        if (day % SeasonDays == 0)
        {
            swapped.Clear();
        }

        if (day >= awayUntil && chance.Next(60) == 0)
        {
            awayUntil = day + (chance.Next(4) == 0 ? chance.Next(57, 90) : chance.Next(8, 40));
        }

        if (chance.Next(50) == 0)
        {
            told.Add(new SoreTold(Next(), At(date), date, AMotion()));
        }

        if (chance.Next(90) == 0)
        {
            told.Add(new AwayTold(Next(), At(date), date.PlusDays(-3), date.PlusDays(-1), AwayFor.Illness));
        }

        if (sessions.Count > 0 && chance.Next(80) == 0)
        {
            Add(chance.Next(Math.Max(0, sessions.Count - 10), sessions.Count), new SessionRedated(Next(), At(date), date.PlusDays(-chance.Next(1, 4))));
        }
    }

    private Motion AMotion() => chance.Next(3) switch { 0 => Motion.Squat, 1 => Motion.HorizontalPush, _ => Motion.CoreBrace };

    private void Train(LocalDate date, TrainingDay training, IReadOnlyList<Prescription> asked)
    {
        var head = new SessionHead
        {
            Id = Next(),
            Begun = At(date),
            Date = date,
            Zone = "Etc/UTC",
            Lifter = lifter.Key,
            Plan = plan.Name,
            DayKey = training.Key,
            DayName = training.Name,
            Kind = training.Kind,
            Prescriptions = asked,
        };
        List<Fact> facts = [];
        if (chance.Next(25) != 0)
        {
            foreach (var slot in asked)
            {
                Reasons.Add(slot.Why.Code);
                facts.AddRange(Slot(training.Slots.Single(s => s.Key == slot.Slot), slot, date));
            }

            facts.Add(new SessionClosed(Next(), At(date)));
        }

        sessions.Add(new SessionRecord(head, facts));
        cards.Add(LookBack.Card(sessions[^1]));
    }

    private IEnumerable<Fact> Slot(Slot slot, Prescription asked, LocalDate date)
    {
        if (chance.Next(25) == 0)
        {
            return [new SlotLeftOut(Next(), At(date), slot.Key)];
        }

        // For a season a slot may be filled otherwise.
        var others = Planner.Others(slot, SimulatedYear.Exercises[asked.Exercise], SimulatedYear.Exercises, kit, lifter);
        if (!swapped.TryGetValue(slot.Key, out var other))
        {
            swapped[slot.Key] = other = chance.Next(3) == 0 && others.Count > 0 ? chance.Next(others.Count) : -1;
        }

        if (other < 0 || other >= others.Count)
        {
            return Sets(asked, date);
        }

        var filled = Planner.Prescribe(slot, others[other], kit, new TrainingHistory(sessions, told), date);
        return [new ExerciseSwapped(Next(), At(date), slot.Key, filled), .. Sets(filled, date)];
    }

    private List<Fact> Sets(Prescription asked, LocalDate date)
    {
        if (asked.Scheme is Scheme.Tick)
        {
            return [new ItemTicked(Next(), At(date), asked.Slot)];
        }

        var (poor, fewer, lighter) = (chance.Next(3) == 0, chance.Next(20) == 0, chance.Next(25) == 0);
        var kind = asked.Scheme switch { Scheme.Hold => SetKind.Hold, Scheme.Total => SetKind.Share, _ => SetKind.Working };
        List<Fact> facts = [];
        for (var set = 0; set < asked.Targets.Count - (fewer ? 1 : 0); set++)
        {
            var target = asked.Targets[set];
            var done = poor && chance.Next(2) == 0 ? Math.Max(0, target - chance.Next(1, 4)) : target + (chance.Next(4) == 0 ? 2 : 0);
            var load = lighter && asked.Load is { Amount: > 5 } mass ? mass with { Amount = mass.Amount - 2.5m } : asked.Load;
            facts.Add(new SetDone(Next(), At(date), asked.Slot, asked.Exercise, kind, set + 1, target, done, load));
        }

        if (facts.Count > 0 && chance.Next(20) == 0)
        {
            facts.Add(new FormTold(Next(), At(date), facts[^1].Id, Slipped: true));
        }

        return facts;
    }

    private void Add(int session, Fact fact)
    {
        sessions[session] = sessions[session] with { Facts = [.. sessions[session].Facts, fact] };
        cards[session] = LookBack.Card(sessions[session]);
    }

    private FactId Next() => new("life", ++sequence);

    private static Instant At(LocalDate date) => date.At(new LocalTime(18, 0)).InUtc().ToInstant();
}
