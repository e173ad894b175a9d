using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Safety;
using RackSide.Training.Schedule;
using RackSide.Training.Sessions;

namespace RackSide.Demo;

/// <summary>
/// Twelve weeks of training up to yesterday. Each date the planner is asked, as it would have been that day, and what is due
/// is performed: no load in it was typed by anybody.
/// </summary>
/// <param name="plan">The plan, on the gym's weekdays.</param>
/// <param name="catalogue">All exercises.</param>
/// <param name="kit">What the gym owns.</param>
/// <param name="today">The day after the last.</param>
/// <param name="zone">The gym's time zone.</param>
internal sealed class TwelveWeeks(Plan plan, Catalogue catalogue, GymKit kit, LocalDate today, DateTimeZone zone)
{
    private static readonly LocalTime Morning = new(7, 0);

    private readonly KitLoads loads = new(kit);
    private readonly LocalDate first = today.PlusDays(-Tollbooth.Days);

    /// <summary>When a lifter joined: on the evening before the first day, while nobody trained.</summary>
    public Instant Joined(Story story) => first.PlusDays(-1).At(new LocalTime(story.Hour, 0)).InZoneLeniently(zone).ToInstant();

    /// <summary>The sessions of all lifters, in the order begun.</summary>
    /// <param name="stories">Who trains, earlier hours first.</param>
    /// <param name="next">The identity of the first fact.</param>
    public IReadOnlyList<SessionRecord> Of(IReadOnlyList<Story> stories, FactId next)
    {
        var people = stories.Select(s => new Person(s, s.Joins(Joined(s)), new Random(s.Seed), [])).ToList();
        List<SessionRecord> all = [];
        var shared = false;
        for (var day = 0; day < Tollbooth.Days; day++)
        {
            if (!shared && day >= Tollbooth.SharedFrom && Share(people, day, next) is { } both)
            {
                shared = true;
                people.Zip(both.Both).ToList().ForEach(p => p.First.Sessions.Add(p.Second.Record));
                all.AddRange(both.Both.Select(s => s.Record));
                next = both.InTurn.NextId;
                continue;
            }

            foreach (var person in people.Where(p => !IsAway(p.Story, day)))
            {
                if (Train(person, day, next) is { } done)
                {
                    person.Sessions.Add(done.Record);
                    all.Add(done.Record);
                    next = done.NextId;
                }
            }
        }

        return all;
    }

    /// <summary>The nights a lifter told of, each on its morning.</summary>
    /// <param name="story">Who slept.</param>
    /// <param name="next">Gives the identity of the next fact.</param>
    public IEnumerable<DayTold> Nights(Story story, Func<FactId> next) => (story.Nights?.Over(story.Seed, Tollbooth.Days) ?? [])
        .Where(n => !IsAway(story, n.Day))
        .Select(n => (Date: first.PlusDays(n.Day), n.Slept))
        .Select(n => new DayTold(next(), n.Date.At(Morning).InZoneLeniently(zone).ToInstant(), n.Date) { Slept = n.Slept });

    private bool IsAway(Story story, int day) =>
        (day >= story.Away.Start.Value && day < story.Away.End.Value)
        || (story.OwesAStrengthDay && day >= Tollbooth.Days - 2 && On(today)?.Kind == DayKind.Skills);

    private TrainingDay? On(LocalDate date) => plan.Week.TryGetValue(date.DayOfWeek, out var key) ? plan.Day(key) : null;

    private Session? Train(Person person, int day, FactId next)
    {
        var (date, history) = (first.PlusDays(day), new TrainingHistory([.. person.Sessions]));
        var todays = Planner.For(Tollbooth.JunosPlan(plan), catalogue, kit, person.Lifter, history, date);
        return todays is { Due.Kind: DueKind.Train, Day: { } due }
            ? Performing(person, due, day).Perform(Session.Begin(Setting(person.Lifter, due, todays, history), Head(person, due, todays, date, next)))
            : null;
    }

    /// <summary>Two on one bar, where both have a strength day; null on other days.</summary>
    private TwoOnOneBar? Share(List<Person> people, int day, FactId next)
    {
        var date = first.PlusDays(day);
        var asked = people.Where(p => !IsAway(p.Story, day)).Select(p => (Person: p, Plan: PlanFor(p, date))).ToList();
        if (asked.Count != 2 || asked.Any(a => a.Plan is not { Due.Kind: DueKind.Train, Day.Kind: DayKind.Strength }))
        {
            return null;
        }

        var heads = asked.Select((a, i) => Head(a.Person, a.Plan.Day!, a.Plan, date, After(next, i))).ToList();
        var begun = heads.Max(h => h.Begun);
        var sessions = asked.Select((a, i) => Session.Resume(
            Setting(a.Person.Lifter, a.Plan.Day!, a.Plan, new TrainingHistory([.. a.Person.Sessions])),
            new SessionRecord(heads[i] with { Begun = begun }, [new BarShared(After(next, 2 + i), begun, heads[1 - i].Id)]),
            After(next, 4),
            begun)).ToList();
        return SharedPerformance.Of(TwoOnOneBar.Of(sessions[0], sessions[1]), [.. asked.Select(a => Performing(a.Person, a.Plan.Day!, day))]);
    }

    private static FactId After(FactId id, int by) => id with { Sequence = id.Sequence + by };

    private TodaysPlan PlanFor(Person person, LocalDate date) =>
        Planner.For(Tollbooth.JunosPlan(plan), catalogue, kit, person.Lifter, new TrainingHistory([.. person.Sessions]), date);

    private static Performer Performing(Person person, TrainingDay due, int day)
    {
        var strengthDay = person.Sessions.Count(s => s.Head.Kind == DayKind.Strength) + 1;
        var (story, chance, strength) = (person.Story, person.Chance, due.Kind == DayKind.Strength);
        var spell = story.Spell is { } s && strength && strengthDay >= s.From && strengthDay <= s.To ? s : null;

        // Every other strength day and every skills day: about twice a week.
        var weighed = !strength || strengthDay % 2 == 0 ? story.Body.Weighed(day, chance, person.Lifter.Unit) : (Mass?)null;
        return new Performer(new Effort(story.Body, day, spell, chance), strength ? story.Incidents.GetValueOrDefault(strengthDay) : null, weighed, chance);
    }

    private SessionSetting Setting(Lifter lifter, TrainingDay day, TodaysPlan todays, TrainingHistory before) => new()
    {
        Day = day,
        Catalogue = catalogue,
        Loads = loads,
        Lifter = lifter,
        Before = before,
        Checks = BeforeLoading.For(day.Kind, todays.Prescriptions.Select(p => catalogue[p.Exercise]), kit),
    };

    private SessionHead Head(Person person, TrainingDay day, TodaysPlan todays, LocalDate date, FactId id) => new()
    {
        Id = id,
        Begun = date.At(new LocalTime(person.Story.Hour, person.Chance.Next(30))).InZoneLeniently(zone).ToInstant(),
        Date = date,
        Zone = zone.Id,
        Lifter = person.Lifter.Key,
        Plan = plan.Name,
        DayKey = day.Key,
        DayName = day.Name,
        Kind = day.Kind,
        Prescriptions = todays.Prescriptions,
    };

    private sealed record Person(Story Story, Lifter Lifter, Random Chance, List<SessionRecord> Sessions);
}
