using NodaTime;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;

namespace RackSide.Simulation;

/// <summary>
/// An invented lifter trains for some weeks with the plan that comes with the program. What to do comes from the planner,
/// day by day, from the history so far; what was done comes from the body. One lifter in three goes away for a while, and
/// everybody misses days.
/// </summary>
public sealed class SimulatedYear
{
    private static readonly LocalDate First = new(2026, 1, 5);

    private readonly SimulatedBody body;
    private readonly Lifter lifter;
    private readonly Random life;
    private readonly int awayFrom;
    private readonly int awayFor;
    private readonly KitLoads loads;
    private readonly List<Given> all = [];
    private TrainingHistory history = TrainingHistory.Empty;
    private int lived;
    private long sequence;

    /// <summary>The lifter of a seed, on the first day.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="holidays">Whether one lifter in three goes away for a while.</param>
    public SimulatedYear(int seed, bool holidays = true)
    {
        body = new SimulatedBody(seed);
        life = new Random(seed + 1_000_000);
        Unit = seed % 4 == 0 ? MassUnit.Pound : MassUnit.Kilogram;
        Kit = seed % 2 == 0 ? KitDefaults.For(Unit) : Large(Unit);
        loads = new KitLoads(Kit);
        lifter = new Lifter("seed", "Seed", Unit, Instant.FromUtc(2026, 1, 1, 12, 0));
        (awayFrom, awayFor) = (life.Next(40, 300), holidays && seed % 3 == 0 ? life.Next(8, 70) : 0);
    }

    /// <summary>The exercises.</summary>
    public static Catalogue Exercises { get; } = CatalogueFile.Read();

    /// <summary>The plan.</summary>
    public static Plan Plan { get; } = PlanFile.Default(Exercises);

    /// <summary>A gym with plates for anybody, in kilograms.</summary>
    public static GymKit LargeKit => Large(MassUnit.Kilogram);

    /// <summary>The unit.</summary>
    public MassUnit Unit { get; }

    /// <summary>The kit.</summary>
    public GymKit Kit { get; }

    /// <summary>All that was done.</summary>
    public TrainingHistory History => history;

    /// <summary>The body.</summary>
    public SimulatedBody Body => body;

    /// <summary>Every prescription, oldest first.</summary>
    public IReadOnlyList<Given> All => all;

    /// <summary>Who trains.</summary>
    public Lifter Lifter => lifter;

    /// <summary>The next day.</summary>
    public LocalDate Today => First.PlusDays(lived);

    /// <summary>Lives on through so many weeks.</summary>
    public SimulatedYear Live(int weeks)
    {
        for (var until = lived + (7 * weeks); lived < until; lived++)
        {
            var day = lived;
            var away = day >= awayFrom && day < awayFrom + awayFor;
            if (!away && !body.StaysAway(0.05))
            {
                Train(First.PlusDays(day));
            }

            body.Sleep();
        }

        return this;
    }

    private void Train(LocalDate date)
    {
        var today = Planner.For(Plan, Exercises, loads, lifter, history, date);
        if (today.Day is not null)
        {
            history = history.And(Session(today, date));
        }
    }

    private SessionRecord Session(TodaysPlan today, LocalDate date)
    {
        var at = date.At(new LocalTime(18, 0)).InUtc().ToInstant();
        var head = today.Head(Next(), at, date, "Etc/UTC", lifter.Key, Plan.Name);
        List<Fact> facts = [];
        foreach (var asked in today.Prescriptions)
        {
            var motion = Exercises[asked.Exercise].Motion;
            var sets = Sets(asked, at).ToList();
            facts.AddRange(sets);
            all.Add(new Given(date, asked, [.. sets.OfType<SetDone>().Select(s => s.Done)], body.Best.GetValueOrDefault(motion)));
        }

        return new SessionRecord(head, [.. facts, new SessionClosed(Next(), at + Duration.FromHours(1))]);
    }

    private IEnumerable<Fact> Sets(Prescription asked, Instant at) => asked.Scheme is Scheme.Tick
        ? [new ItemTicked(Next(), at, asked.Slot)]
        : asked.Targets.Select((target, set) => (Fact)new SetDone(
            Next(), at, asked.Slot, asked.Exercise, Kind(asked.Scheme), set + 1, target, Done(asked, set, target), asked.Load));

    private int Done(Prescription asked, int set, int target) => asked.Scheme is Scheme.Hold
        ? body.Seconds(Exercises[asked.Exercise], set, target)
        : asked.Scheme is Scheme.Total or Scheme.Accumulate ? target
        : body.Reps(Exercises[asked.Exercise], asked.Load, set, target);

    private FactId Next() => new("sim", ++sequence);

    private static SetKind Kind(Scheme scheme) => scheme switch
    {
        Scheme.Hold => SetKind.Hold,
        Scheme.Total => SetKind.Share,
        Scheme.Accumulate => SetKind.HeldShare,
        _ => SetKind.Working,
    };

    /// <summary>A gym with plates for anybody, half-size plates, and dumbbells to match.</summary>
    private static GymKit Large(MassUnit unit) => KitDefaults.For(unit) with
    {
        Plates = [.. KitDefaults.Plates(unit).Select((p, i) => p with { Pairs = i == 0 ? 5 : 1 })],
        Dumbbells = [.. Enumerable.Range(1, 20).Select(i => new Mass(i * (unit == MassUnit.Kilogram ? 2.5m : 5m), unit))],
    };
}

/// <summary>What was asked on a day and what became of it.</summary>
/// <param name="Date">The day.</param>
/// <param name="Asked">The prescription.</param>
/// <param name="Done">Reps or seconds of each set.</param>
/// <param name="Best">The most the body could lift once in this motion up to this day, kg on a bar.</param>
public sealed record Given(LocalDate Date, Prescription Asked, IReadOnlyList<int> Done, double Best)
{
    /// <summary>The fewest reps or seconds that are no miss.</summary>
    public int Floor => Asked.Scheme is Scheme.Range range ? range.Low : Asked.Targets.Min();

    /// <summary>Whether a set fell short.</summary>
    public bool Missed => Done.Any(d => d < Floor);
}
