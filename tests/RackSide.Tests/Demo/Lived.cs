using System.Collections.Concurrent;
using NodaTime;
using RackSide.Demo;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Summary;

namespace RackSide.Tests.Demo;

/// <summary>The twelve weeks before a date, as the demo makes them.</summary>
internal sealed class Lived
{
    private static readonly ConcurrentDictionary<int, Lazy<Lived>> Known = new();
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/London"];

    public Lived(LocalDate today)
    {
        var rules = Tollbooth.Rules(today);
        (Today, Kit) = (today, rules.Kit);
        Plan = PlanFile.Default(Catalogue).On(rules.TrainingDays);
        All = new TwelveWeeks(Plan, Catalogue, Kit, today, Zone).Of(Tollbooth.Stories, new FactId("bcdfgh", 1));
    }

    public static Catalogue Catalogue { get; } = CatalogueFile.Read();

    /// <summary>A Monday and the six days after it, then the same in the week in which clocks go forward.</summary>
    public static TheoryData<int> Days => [0, 1, 2, 3, 4, 5, 6, 125, 126];

    /// <summary>One of <see cref="Days"/>; made once, because nothing changes it.</summary>
    public static Lived Until(int day) => Known.GetOrAdd(day, d => new Lazy<Lived>(() => Anew(d))).Value;

    /// <summary>The same, made again.</summary>
    public static Lived Anew(int day) => new(new LocalDate(2026, 11, 23).PlusDays(day));

    public LocalDate Today { get; }

    public GymKit Kit { get; }

    public Plan Plan { get; }

    public IReadOnlyList<SessionRecord> All { get; }

    public IReadOnlyList<string> Lifters { get; } = ["ottoline", "bram"];

    public IReadOnlyList<SessionRecord> Of(string lifter) => [.. All.Where(s => s.Head.Lifter == lifter)];

    public TrainingHistory History(string lifter) => new(Of(lifter));

    public TodaysPlan TodaysPlan(string lifter) => Planner.For(Plan, Catalogue, Kit, Person(lifter), History(lifter), Today);

    public IReadOnlyList<WeighIn> WeighIns(string lifter) =>
        [.. from s in Of(lifter) from told in s.Standing.OfType<BodyWeighed>() select new WeighIn(s.Head.Date, told.Weight)];

    public WeekSummary Week(string lifter, LocalDate date) =>
        WeekSummary.For(Plan, Catalogue, Kit, Person(lifter), History(lifter), WeighIns(lifter), date);

    /// <summary>Everything in it, as text that two runs can be compared by.</summary>
    public string Text() => string.Join('\n', All.SelectMany(s => s.Head.Prescriptions
        .Select(p => $"{s.Head.Date} {s.Head.Begun} {p.Slot} {p.Load} {string.Join(',', p.Targets)} {p.Why}")
        .Concat(s.Facts.Select(f => $"{f}"))));

    private static Lifter Person(string lifter) =>
        Tollbooth.Stories.Select(s => s.Joins(Instant.MinValue)).Single(l => l.Key == lifter);
}
