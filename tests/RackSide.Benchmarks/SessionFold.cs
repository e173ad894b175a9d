using BenchmarkDotNet.Attributes;
using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Benchmarks;

/// <summary>What it costs to fold facts: the session in hand after every key, and years of sessions at start-up.</summary>
[MemoryDiagnoser]
public class SessionFold
{
    private const int SetsInSession = 38;
    private static readonly Instant Begun = Instant.FromUtc(2026, 11, 25, 18, 0);
    private SessionRecord session = null!;
    private TrainingHistory history = null!;

    /// <summary>Strength sessions: one, a year of two a week, ten years.</summary>
    [Params(1, 104, 1040)]
    public int Sessions { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        history = new TrainingHistory([.. Enumerable.Range(0, Sessions).Select(Session)]);
        session = history.Sessions[^1];
    }

    [Benchmark]
    public int SetsOfOneSession() => session.Sets.Count;

    [Benchmark]
    public int PerformancesOfOneExercise() => history.Of("squat").Count();

    [Benchmark]
    public Performance LastPerformanceOfOneExercise() => history.Of("squat").Last();

    /// <summary>A session of 38 sets in seven slots in which one set was struck and one slipped.</summary>
    private static SessionRecord Session(int number)
    {
        string[] exercises = ["squat", "row", "press", "pull", "overhead", "curl", "plank"];
        var first = number * 100L;
        List<Fact> facts = [.. Enumerable.Range(1, SetsInSession).Select(i => new SetDone(
            new FactId("bench", first + i), Begun + Duration.FromMinutes(i), exercises[i % exercises.Length],
            exercises[i % exercises.Length], SetKind.Working, 1 + (i / exercises.Length), 5, 5, Mass.Kg(60m)))];
        facts.Add(new FactStruck(new FactId("bench", first + 50), Begun, facts[^1].Id));
        facts.Add(new FormTold(new FactId("bench", first + 51), Begun, facts[3].Id, true));
        facts.Add(new SessionClosed(new FactId("bench", first + 52), Begun + Duration.FromHours(1)));
        return new SessionRecord(Head(new FactId("bench", first), number, exercises), facts);
    }

    private static SessionHead Head(FactId id, int number, IEnumerable<string> exercises) => new()
    {
        Id = id,
        Begun = Begun,
        Date = new LocalDate(2026, 11, 25).PlusDays(number),
        Zone = "Etc/UTC",
        Lifter = "bench",
        Plan = "bench",
        DayKey = "strength",
        DayName = "Strength day",
        Kind = DayKind.Strength,
        Prescriptions = [.. exercises.Select(exercise => new Prescription
        {
            Slot = exercise,
            Motion = Motion.Squat,
            Exercise = exercise,
            Scheme = new Scheme.Fixed(5, 5),
            Targets = [5, 5, 5, 5, 5],
            Load = Mass.Kg(60m),
            Rest = Duration.FromMinutes(2),
            Why = new Reason("all-met", "all 5x5 done on Monday: 2.5 kg more"),
        })],
    };
}
