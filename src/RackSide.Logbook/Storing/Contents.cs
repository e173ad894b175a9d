using LiteDB;
using NodaTime;
using RackSide.Logbook.Documents;
using RackSide.Training.History;
using Mapped = RackSide.Logbook.Documents;

namespace RackSide.Logbook.Storing;

/// <summary>
/// Everything the logbook holds, in memory: for a full check, for a log that is made anew, for a snapshot, and for reads
/// once the log has failed. A write taken twice changes nothing.
/// </summary>
internal sealed class Contents(string rack) : IKeeping, IHolding
{
    private readonly Dictionary<string, Numbered<Lifter>> lifters = new(StringComparer.Ordinal);
    private readonly Dictionary<FactId, Numbered<SessionRecord>> sessions = [];
    private readonly Dictionary<(string Lifter, LocalDate Date), Numbered<KeptWeight>> weights = [];
    private readonly Dictionary<FactId, Numbered<KeptFact>> told = [];

    /// <summary>This rack's name.</summary>
    public string Rack { get; set; } = rack;

    /// <summary>How many writes it has taken in its life.</summary>
    public long Writes { get; set; }

    /// <summary>The highest count of any identity seen, of whatever rack; 0 where there is none.</summary>
    public long HighestSequence { get; private set; }

    /// <summary>Whether a session came from a document of format 4 or before.</summary>
    public bool HoldsWrittenOut { get; private set; }

    /// <summary>The file of house rules of the moment, in a backup; null in a log.</summary>
    public byte[]? HouseRules { get; set; }

    /// <summary>The lifters.</summary>
    public IEnumerable<Lifter> Lifters => lifters.Values.OrderBy(l => l.Number).Select(l => l.Value);

    /// <summary>The sessions.</summary>
    public IEnumerable<SessionRecord> Sessions => sessions.Values.Select(s => s.Value);

    /// <summary>Body weights told outside a session.</summary>
    public IEnumerable<KeptWeight> Weights => weights.Values.Select(w => w.Value);

    /// <summary>Facts told outside a session.</summary>
    public IEnumerable<KeptFact> Told => told.Values.Select(t => t.Value);

    /// <summary>What is kept for the exchange between racks.</summary>
    public RackShare Share { get; set; } = new();

    /// <summary>Everything, as documents.</summary>
    public IEnumerable<Stored> Documents =>
        lifters.Values.Select(l => Filing.Of(l.Value, l.Number))
            .Concat(sessions.Values.Select(s => Filing.Of(s.Value, s.Number)))
            .Concat(weights.Values.Select(w => Filing.Of(w.Value, w.Number)))
            .Concat(told.Values.Select(t => Filing.Of(t.Value, t.Number)))
            .Concat(HouseRules is { } rules ? [new Stored(Collections.HouseRules, Mapped.RulesFile.Of(rules))] : Array.Empty<Stored>())
            .Concat(Share.Documents);

    /// <summary>The session of that identity, or null.</summary>
    public SessionRecord? Session(FactId id) => sessions.TryGetValue(id, out var found) ? found.Value : null;

    /// <inheritdoc/>
    public bool Has(FactId session) => sessions.ContainsKey(session);

    /// <inheritdoc/>
    public string? LifterOf(FactId session) => Session(session)?.Head.Lifter;

    /// <inheritdoc/>
    public Lifter? Lifter(string key) => lifters.TryGetValue(key, out var found) ? found.Value : null;

    /// <summary>Takes a write as it was journaled, with what it means for the exchange between racks.</summary>
    public void Replay(Entry entry) => Share.Take(entry, this);

    /// <summary>Whether a fact of that identity was told outside a session.</summary>
    public bool IsTold(FactId id) => told.ContainsKey(id);

    /// <summary>The sessions, each with the number of its document.</summary>
    public IEnumerable<(long Number, SessionRecord Session)> NumberedSessions => sessions.Values.Select(s => (s.Number, s.Value));

    /// <summary>The lifters, each with the number of its document.</summary>
    public IEnumerable<(long Number, Lifter Lifter)> NumberedLifters => lifters.Values.Select(l => (l.Number, l.Value));

    /// <inheritdoc/>
    public IEnumerable<SessionRecord> SessionsOf(IReadOnlyCollection<long>? numbers) =>
        sessions.Values.Where(s => numbers?.Contains(s.Number) ?? true).Select(s => s.Value);

    /// <inheritdoc/>
    public IEnumerable<(long Number, KeptWeight Weight)> AllWeights() => weights.Values.Select(w => (w.Number, w.Value));

    /// <inheritdoc/>
    public IEnumerable<(long Number, KeptFact Fact)> AllTold() => told.Values.Select(t => (t.Number, t.Value));

    /// <summary>Its word on itself.</summary>
    public About About => new(
        Rack, Writes, lifters.Count, sessions.Count, sessions.Values.Sum(s => s.Value.Facts.Count), weights.Count, told.Count);

    /// <summary>Takes a write.</summary>
    /// <returns>The document it changed; null where it changed none, because it was here already or has nowhere to go.</returns>
    public Stored? Take(Entry entry) => entry switch
    {
        Entry.LifterKept e => Put(e.Lifter, lifters.TryGetValue(e.Lifter.Key, out var old) ? old.Number : lifters.Count + 1L),
        Entry.SessionBegun e => Take(new SessionRecord(e.Head, [])),
        Entry.FactAdded e => Add(e.Session, e.Fact),
        Entry.WeightKept e => Keep(e.Weight),
        Entry.FactTold e => told.ContainsKey(e.Told.Fact.Id) ? null : Put(e.Told, told.Count + 1L),
        _ => throw new ArgumentException($"cannot take {entry.GetType()}", nameof(entry)),
    };

    /// <summary>Takes a whole session.</summary>
    /// <returns>The document it makes; null where the session was here already.</returns>
    public Stored? Take(SessionRecord session) => sessions.ContainsKey(session.Head.Id) ? null : Put(session, sessions.Count + 1L);

    /// <inheritdoc/>
    public Stored? Take(FactId session, IReadOnlyCollection<Fact> facts) => sessions.TryGetValue(session, out var found) && found.Value.With(facts) is { } more
        ? Put(more, found.Number)
        : null;

    /// <summary>Takes a session in the place of the one of its identity.</summary>
    public void Replace(SessionRecord session) => Put(session, sessions[session.Head.Id].Number);

    /// <summary>Takes a document as it was stored.</summary>
    /// <exception cref="InvalidDataException">It cannot be read.</exception>
    public void Restore(string collection, BsonDocument document)
    {
        var number = document.Long("_id");
        switch (collection)
        {
            case Collections.Lifters:
                Hold(Mapped.Lifters.Read(document), number);
                break;
            case Collections.Sessions:
                Hold(Mapped.Sessions.Read(document), number);
                HoldsWrittenOut |= !Mapped.Sessions.IsPacked(document);
                break;
            case Collections.Racks:
                Share.Restore(document);
                break;
            case Collections.Told:
                Hold(Mapped.Told.Read(document), number);
                break;
            default:
                Hold(Mapped.Weights.Read(document), number);
                break;
        }
    }

    private Stored? Add(FactId id, Fact fact)
    {
        if (!sessions.TryGetValue(id, out var found) || found.Value.Facts.Any(f => f.Id == fact.Id))
        {
            return null;
        }

        return Put(Share.With(found.Value, fact), found.Number);
    }

    private Stored? Keep(KeptWeight weight)
    {
        var known = weights.TryGetValue((weight.Lifter, weight.Date), out var old);
        See(weight.Id);
        return known && old.Value.Id.CompareTo(weight.Id) >= 0 ? null : Put(weight, known ? old.Number : weights.Count + 1L);
    }

    private Stored Put(Lifter lifter, long number)
    {
        Hold(lifter, number);
        return Filing.Of(lifter, number);
    }

    private Stored Put(SessionRecord session, long number)
    {
        Hold(session, number);
        return Filing.Of(session, number);
    }

    private Stored Put(KeptWeight weight, long number)
    {
        Hold(weight, number);
        return Filing.Of(weight, number);
    }

    private Stored Put(KeptFact fact, long number)
    {
        Hold(fact, number);
        return Filing.Of(fact, number);
    }

    private void Hold(Lifter lifter, long number) => lifters[lifter.Key] = new(number, lifter);

    private void Hold(SessionRecord session, long number)
    {
        sessions[session.Head.Id] = new(number, session);
        See(session.Head.Id);
        foreach (var fact in session.Facts)
        {
            See(fact.Id);
        }
    }

    private void Hold(KeptWeight weight, long number)
    {
        weights[(weight.Lifter, weight.Date)] = new(number, weight);
        See(weight.Id);
    }

    private void Hold(KeptFact fact, long number)
    {
        told[fact.Fact.Id] = new(number, fact);
        See(fact.Fact.Id);
    }

    /// <inheritdoc/>
    public void See(FactId id) => HighestSequence = Math.Max(HighestSequence, id.Sequence);

    private readonly record struct Numbered<T>(long Number, T Value);
}
