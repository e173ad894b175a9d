using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Planning;

namespace RackSide.Logbook.Storing;

/// <summary>
/// What the open logbook knows without reading: its lifters, and a card of each session. Sessions and what was told outside
/// them are read when they are asked for; what was written since opening stays in memory, so that reads also hold what only
/// the journal could take. A write taken twice changes nothing.
/// </summary>
internal sealed class Register : IHolding
{
    private readonly Dictionary<string, (long Number, Lifter Lifter)> lifters = new(StringComparer.Ordinal);
    private readonly Dictionary<FactId, RegisterRow> rows = [];
    private readonly Dictionary<FactId, SessionRecord> read = [];
    private Dictionary<(string Lifter, LocalDate Date), (long Number, KeptWeight Weight)>? weights;
    private Dictionary<FactId, (long Number, KeptFact Fact)>? told;
    private Func<IKeeping> keeping;
    private int facts;
    private int weightCount;
    private int toldCount;

    /// <summary>A register as it was kept with a log.</summary>
    public Register(About about, IEnumerable<(long Number, Lifter Lifter)> lifters, RackShare share, RegisterState state, IKeeping keeping)
    {
        Share = share;
        (Rack, Writes, this.keeping) = (about.Rack, about.Writes, () => keeping);
        (weightCount, toldCount) = (about.Weights, about.Told);
        (HighestSequence, Newest) = (Math.Max(state.HighestSequence, share.HighestSequence), state.Newest);
        foreach (var lifter in lifters)
        {
            this.lifters[lifter.Lifter.Key] = lifter;
        }

        foreach (var row in state.Rows)
        {
            rows[row.Id] = row;
            facts += row.Facts;
        }
    }

    /// <summary>A register made of everything that a log holds.</summary>
    public static Register Of(Contents contents, IKeeping keeping) => new(
        contents.About, contents.NumberedLifters, contents.Share, RegisterState.Of(contents), keeping);

    /// <summary>This rack's name.</summary>
    public string Rack { get; set; }

    /// <summary>What is kept for the exchange between racks.</summary>
    public RackShare Share { get; }

    /// <summary>How many writes it has taken in its life.</summary>
    public long Writes { get; set; }

    /// <summary>The highest count of any identity seen, of whatever rack; 0 where there is none.</summary>
    public long HighestSequence { get; private set; }

    /// <summary>The newest entry by identity: a session's beginning, or a fact in a session or outside; null where there is none.</summary>
    public (FactId Id, Instant At)? Newest { get; private set; }

    /// <summary>The lifters, in the order they were first kept.</summary>
    public IEnumerable<Lifter> Lifters => lifters.Values.Where(l => !Share.IsGone(l.Lifter.Key)).OrderBy(l => l.Number).Select(l => l.Lifter);

    /// <summary>The register as it is kept with the log.</summary>
    public RegisterState State => new(HighestSequence, Newest, [.. rows.Values.Select(WithCard)]);

    /// <summary>Its word on itself.</summary>
    public About About => new(Rack, Writes, lifters.Count, rows.Count, facts, weightCount, toldCount);

    /// <summary>Body weights told outside a session.</summary>
    public IEnumerable<KeptWeight> Weights => WeightsRead().Values.Select(w => w.Weight);

    /// <summary>Facts told outside a session.</summary>
    public IEnumerable<KeptFact> Told => ToldRead().Values.Select(t => t.Fact);

    /// <summary>The cards of a lifter's sessions, in the order begun.</summary>
    public IEnumerable<SessionCard> Cards(string lifter) =>
        rows.Values.Select(r => WithCard(r).Card!).Where(c => c.Lifter == lifter).OrderBy(c => c.Id);

    /// <summary>Whether a session was begun.</summary>
    public bool Has(FactId id) => rows.ContainsKey(id);

    /// <inheritdoc/>
    public string? LifterOf(FactId session) => rows.TryGetValue(session, out var row) ? row.Card?.Lifter ?? read[session].Head.Lifter : null;

    /// <inheritdoc/>
    public Lifter? Lifter(string key) => lifters.TryGetValue(key, out var found) ? found.Lifter : null;

    /// <summary>Whether something of a lifter who was erased is still here.</summary>
    public bool HoldsErased => Share.Gone.Count > 0 && (lifters.Keys.Any(Share.IsGone)
        || rows.Values.Any(r => Share.IsGone(WithCard(r).Card!.Lifter)) || Weights.Any(w => Share.IsGone(w.Lifter)) || Told.Any(t => Share.IsGone(t.Lifter)));

    /// <summary>Whether a fact of that identity was told outside a session.</summary>
    public bool IsTold(FactId id) => ToldRead().ContainsKey(id);

    /// <summary>The session of that identity, or null.</summary>
    public SessionRecord? Session(FactId id) => Sessions([id]) is [var one] ? one : null;

    /// <summary>Sessions by identity, in the order begun; they stay in memory.</summary>
    public IReadOnlyList<SessionRecord> Sessions(IReadOnlyCollection<FactId> which)
    {
        var missing = which.Where(id => !read.ContainsKey(id) && rows.ContainsKey(id)).Select(id => rows[id].Number).ToHashSet();
        if (missing.Count > 0)
        {
            foreach (var session in keeping().SessionsOf(missing))
            {
                read[session.Head.Id] = session;
            }
        }

        return [.. which.Where(read.ContainsKey).Select(id => read[id]).OrderBy(s => s.Head.Id)];
    }

    /// <summary>All sessions of a lifter, in the order begun; they are read anew each time, or ten years would stay in memory.</summary>
    public IReadOnlyList<SessionRecord> AllOf(string lifter)
    {
        var numbers = rows.Values.Where(r => WithCard(r).Card!.Lifter == lifter && !read.ContainsKey(r.Id)).Select(r => r.Number).ToHashSet();
        var unread = numbers.Count == 0 ? [] : keeping().SessionsOf(numbers.Count == rows.Count ? null : numbers);
        return [.. unread.Concat(read.Values.Where(s => s.Head.Lifter == lifter)).OrderBy(s => s.Head.Id)];
    }

    /// <summary>All of it in memory: for a backup, an export, or a log that is made anew.</summary>
    public Contents Whole()
    {
        var all = new Contents(Rack) { Writes = Writes, Share = Share };
        foreach (var lifter in Lifters)
        {
            all.Take(new Entry.LifterKept(lifter));
        }

        foreach (var session in keeping().SessionsOf(null).Where(s => !read.ContainsKey(s.Head.Id)).Concat(read.Values).Where(s => !Share.IsGone(s.Head.Lifter)).OrderBy(s => rows[s.Head.Id].Number))
        {
            all.Take(session);
        }

        all.See(new FactId(Rack, HighestSequence));
        foreach (var (_, weight) in WeightsRead().Values.Where(w => !Share.IsGone(w.Weight.Lifter)).OrderBy(w => w.Number))
        {
            all.Take(new Entry.WeightKept(weight));
        }

        foreach (var (_, fact) in ToldRead().Values.Where(t => !Share.IsGone(t.Fact.Lifter)).OrderBy(t => t.Number))
        {
            all.Take(new Entry.FactTold(fact));
        }

        return all;
    }

    /// <summary>Where whole documents are read from.</summary>
    public IKeeping Keeping => keeping();

    /// <summary>The log has failed: what is asked for from here on comes from elsewhere.</summary>
    public void ReadFrom(Func<IKeeping> elsewhere)
    {
        var once = new Lazy<IKeeping>(elsewhere);
        keeping = () => once.Value;
    }

    /// <summary>Takes a write.</summary>
    /// <returns>The document it changed; null where it changed none, because it was here already or has nowhere to go.</returns>
    public Stored? Take(Entry entry) => entry switch
    {
        Entry.LifterKept e => Keep(e.Lifter),
        Entry.SessionBegun e => Take(new SessionRecord(e.Head, [])),
        Entry.FactAdded e => Add(e.Session, e.Fact),
        Entry.WeightKept e => Keep(e.Weight),
        Entry.FactTold e => Tell(e.Told),
        _ => throw new ArgumentException($"cannot take {entry.GetType()}", nameof(entry)),
    };

    /// <inheritdoc/>
    public Stored? Take(FactId session, IReadOnlyCollection<Fact> facts) => Session(session)?.With(facts) is { } more ? Put(more, rows[session].Number) : null;

    /// <summary>Takes a whole session.</summary>
    /// <returns>The document it makes; null where the session was here already.</returns>
    public Stored? Take(SessionRecord session) => rows.ContainsKey(session.Head.Id) ? null : Put(session, rows.Count + 1L);

    private Stored Keep(Lifter lifter)
    {
        var number = lifters.TryGetValue(lifter.Key, out var old) ? old.Number : lifters.Count + 1L;
        lifters[lifter.Key] = (number, lifter);
        return Filing.Of(lifter, number);
    }

    private Stored? Add(FactId id, Fact fact) => Session(id) is { } session && session.Facts.All(f => f.Id != fact.Id)
        ? Put(Share.With(session, fact), rows[id].Number)
        : null;

    private Stored? Keep(KeptWeight weight)
    {
        var all = WeightsRead();
        var known = all.TryGetValue((weight.Lifter, weight.Date), out var old);
        See(weight.Id);
        if (known && old.Weight.Id.CompareTo(weight.Id) >= 0)
        {
            return null;
        }

        var number = known ? old.Number : all.Count + 1L;
        all[(weight.Lifter, weight.Date)] = (number, weight);
        weightCount = all.Count;
        return Filing.Of(weight, number);
    }

    private Stored? Tell(KeptFact fact)
    {
        var all = ToldRead();
        if (all.ContainsKey(fact.Fact.Id))
        {
            return null;
        }

        all[fact.Fact.Id] = (all.Count + 1L, fact);
        toldCount = all.Count;
        See(fact.Fact.Id, fact.Fact.At);
        return Filing.Of(fact, all.Count);
    }

    private Stored Put(SessionRecord session, long number)
    {
        var id = session.Head.Id;
        facts += session.Facts.Count - (rows.TryGetValue(id, out var old) ? old.Facts : 0);
        rows[id] = new RegisterRow(id, number, session.Facts.Count, Card: null);
        read[id] = session;
        See(id, session.Head.Begun);
        foreach (var fact in session.Facts)
        {
            See(fact.Id, fact.At);
        }

        return Filing.Of(session, number);
    }

    // A card is made when it is asked for: a session changes with every set, and nobody looks at it meanwhile.
    private RegisterRow WithCard(RegisterRow row) =>
        row.Card is null ? rows[row.Id] = row with { Card = LookBack.Card(read[row.Id]) } : row;

    /// <inheritdoc/>
    public void See(FactId id) => HighestSequence = Math.Max(HighestSequence, id.Sequence);

    // In a gym another rack's clock casts no doubt on this one's.
    private void See(FactId id, Instant at)
    {
        See(id);
        if (Share.State.Gym is not null && id.Rack != Rack)
        {
            return;
        }

        if (Newest is not { } newest || newest.Id.CompareTo(id) <= 0)
        {
            Newest = (id, at);
        }
    }

    private Dictionary<(string Lifter, LocalDate Date), (long Number, KeptWeight Weight)> WeightsRead() =>
        weights ??= keeping().AllWeights().ToDictionary(w => (w.Weight.Lifter, w.Weight.Date));

    private Dictionary<FactId, (long Number, KeptFact Fact)> ToldRead() =>
        told ??= keeping().AllTold().ToDictionary(t => t.Fact.Fact.Id);
}
