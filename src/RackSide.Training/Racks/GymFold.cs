using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Racks;

/// <summary>
/// What a set of events says. It is a fold of the set in the order of identities and of nothing else, so racks that have the
/// same events have the same lifters, histories and next loads, in whatever order, how often, and from whom the events came.
/// </summary>
public sealed class GymFold
{
    private readonly SortedDictionary<FactId, GymEvent> events = [];

    /// <summary>Nothing yet.</summary>
    public GymFold()
    {
    }

    /// <summary>These events.</summary>
    public GymFold(IEnumerable<GymEvent> from) => Add(from);

    /// <summary>The events, in their order, those of erased lifters gone but for the erasure.</summary>
    public IReadOnlyCollection<GymEvent> Events
    {
        get
        {
            var erased = Erased;
            return [.. events.Values.Where(e => e is LifterErased || !erased.Contains(e.Lifter))];
        }
    }

    /// <summary>Takes events; one that is here already stays as it is.</summary>
    public void Add(IEnumerable<GymEvent> more)
    {
        foreach (var one in more)
        {
            events.TryAdd(one.Id, one);
        }
    }

    /// <summary>Everything of both.</summary>
    public GymFold Merge(GymFold other)
    {
        var both = new GymFold(events.Values);
        both.Add(other.events.Values);
        return both;
    }

    /// <summary>The keys of those who were erased.</summary>
    public IReadOnlySet<string> Erased => events.Values.OfType<LifterErased>().Select(e => e.Lifter).ToHashSet();

    /// <summary>The lifters, in the order they joined.</summary>
    public IReadOnlyList<Lifter> Lifters =>
    [
        .. Events.OfType<LifterTold>().GroupBy(e => e.Lifter)
            .Select(told => told.Skip(1).Aggregate(told.First().Told, (lifter, e) => lifter.With(e.Told, e.Fields)))
            .OrderBy(l => l.Joined).ThenBy(l => l.Key, StringComparer.Ordinal),
    ];

    /// <summary>The sessions of a lifter, oldest first, each with its facts in the order of identities. Facts of one that has not come yet wait.</summary>
    public IReadOnlyList<SessionRecord> Sessions(string lifter)
    {
        var facts = Events.OfType<SessionFact>().ToLookup(e => e.Session, e => e.Fact);
        return [.. Events.OfType<SessionStarted>().Where(s => s.Lifter == lifter).Select(s => new SessionRecord(s.Head, [.. facts[s.Id]]))];
    }

    /// <summary>What a lifter told outside sessions, in the order of identities.</summary>
    public IReadOnlyList<Fact> Told(string lifter) => [.. Events.OfType<OutsideFact>().Where(e => e.Lifter == lifter).Select(e => e.Fact)];

    /// <summary>Body weights of a lifter told outside sessions, by date.</summary>
    public IReadOnlyDictionary<LocalDate, OutsideWeight> Weights(string lifter) => Events.OfType<OutsideWeight>()
        .Where(e => e.Lifter == lifter).GroupBy(e => e.Date).ToDictionary(day => day.Key, day => day.Last());

    /// <summary>
    /// The sessions of a lifter that are open at the same time, on two racks that did not hear of each other; empty where there
    /// are fewer than two. Both are kept: the lifter closes the one that was forgotten.
    /// </summary>
    public static IReadOnlyList<SessionCard> OpenTwice(IEnumerable<SessionCard> cards) =>
        cards.Where(c => !c.Closed).OrderBy(c => c.Id).ToList() is { Count: > 1 } open ? open : [];
}
