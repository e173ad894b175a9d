using RackSide.Logbook.Documents;
using RackSide.Training.History;
using RackSide.Training.Racks;

namespace RackSide.Logbook.Storing;

/// <summary>
/// What a logbook keeps for the exchange between racks: what waits to be sent, how far the gym's events were taken, and what
/// makes events mean the same in whatever order they come. It is written in the same transaction as what it is about, so a
/// kill leaves both or neither. Its documents are written over, never deleted: the engine is safest so.
/// </summary>
internal sealed class RackShare
{
    private readonly SortedDictionary<long, ShareSlot> slots = [];
    private readonly SortedDictionary<long, (long Slot, GymEvent Event)> waiting = [];
    private readonly Dictionary<FactId, List<(long Slot, SessionFact Event)>> early = [];
    private readonly Dictionary<string, (long Slot, Dictionary<LifterFields, FactId> Told)> stamps = new(StringComparer.Ordinal);
    private readonly Dictionary<string, LifterErased> gone = new(StringComparer.Ordinal);
    private readonly Stack<long> free = [];

    /// <summary>How this rack stands with its gym.</summary>
    public ShareState State { get; private set; } = ShareState.Alone;

    /// <summary>What waits to be sent, by number.</summary>
    public IEnumerable<(long Number, GymEvent Event)> Waiting => waiting.Select(w => (w.Key, w.Value.Event));

    /// <summary>How many events wait to be sent.</summary>
    public int WaitingCount => waiting.Count;

    /// <summary>Facts that came before their sessions.</summary>
    public IEnumerable<SessionFact> Early => early.Values.SelectMany(e => e.Select(f => f.Event));

    /// <summary>Those who were erased.</summary>
    public IReadOnlyCollection<LifterErased> Gone => gone.Values;

    /// <summary>The highest count of any identity that stands only here; 0 where there is none.</summary>
    public long HighestSequence => waiting.Values.Select(w => w.Event.Id).Concat(gone.Values.Select(g => g.Id))
        .Concat(stamps.Values.SelectMany(s => s.Told.Values)).Select(id => id.Sequence).DefaultIfEmpty().Max();

    /// <summary>Whether a lifter was erased.</summary>
    public bool IsGone(string lifter) => gone.ContainsKey(lifter);

    /// <summary>Everything, as documents.</summary>
    public IEnumerable<Stored> Documents => State == ShareState.Alone ? [] : slots.Select(s => Shares.Of(s.Key, s.Value)).Prepend(Shares.Of(State));

    /// <summary>Takes a document as it was stored.</summary>
    /// <exception cref="InvalidDataException">It cannot be read.</exception>
    public void Restore(LiteDB.BsonDocument document)
    {
        if (document.Long("_id") == Shares.StateNumber)
        {
            State = Shares.ReadState(document);
        }
        else
        {
            Hold(document.Long("_id"), Shares.ReadSlot(document));
        }
    }

    /// <summary>A session with one more fact: on a rack alone in the order written, in a gym in the order of identities, which is the same on every rack.</summary>
    public SessionRecord With(SessionRecord session, Fact fact) =>
        State.Gym is null ? session with { Facts = [.. session.Facts, fact] } : session.With(fact);

    /// <summary>Whether as many documents are here as were written.</summary>
    public bool IsWhole => slots.Count == State.Slots;

    /// <summary>By which events a lifter's fields were told, each with the fields it told.</summary>
    public IEnumerable<(FactId Id, LifterFields Fields)> Told(string lifter) => stamps.TryGetValue(lifter, out var known)
        ? known.Told.GroupBy(t => t.Value).OrderBy(g => g.Key).Select(g => (g.Key, g.Aggregate(LifterFields.None, (all, t) => all | t.Key)))
        : [];

    /// <summary>Takes a write, whatever it is.</summary>
    /// <returns>The documents it changed.</returns>
    public IReadOnlyList<Stored> Take(Entry entry, IHolding into) => entry switch
    {
        Entry.GymLeft => Leave(),
        Entry.Sent e => Sent(e),
        Entry.Pulled e => Pull(e, into),
        Entry.ShareAnew e => [Stand(State with { Pulled = 0, Anchor = null, Whole = e.Whole ? "" : State.Whole })],
        _ => Own(entry, into),
    };

    /// <summary>The same for another logbook: how the rack stands, and of the rest what is of lifters who stay.</summary>
    public RackShare For(ShareState state, Func<string, bool> holds)
    {
        var copy = new RackShare { State = state with { Slots = 0 } };
        foreach (var slot in slots.Values.Where(s => s is not ShareSlot.Free && (s is ShareSlot.Gone || holds(LifterOf(s)))))
        {
            copy.Put(slot);
        }

        return copy;
    }

    /// <summary>Stands otherwise with the gym from here on.</summary>
    public Stored Stand(ShareState state) => Shares.Of(State = state with { Slots = slots.Count });

    /// <summary>Keeps for good that a lifter was erased, and lets go of what waited of theirs.</summary>
    public IReadOnlyList<Stored> Erase(LifterErased erased)
    {
        if (!gone.TryAdd(erased.Lifter, erased))
        {
            return [];
        }

        List<Stored> changed = [.. slots.Where(s => s.Value is not (ShareSlot.Free or ShareSlot.Gone) && LifterOf(s.Value) == erased.Lifter).Select(s => s.Key).ToList().Select(Release)];
        changed.Add(Put(new ShareSlot.Gone(erased)));
        return [.. changed, Stand(State)];
    }

    /// <summary>Puts an event among those that wait to be sent.</summary>
    public IReadOnlyList<Stored> Wait(GymEvent one)
    {
        var slot = Put(new ShareSlot.Waiting(State.Next, one));
        return [slot, Stand(State with { Next = State.Next + 1 })];
    }

    /// <summary>Keeps by which event fields of a lifter were told, where that is later than what is known.</summary>
    /// <returns>The fields that are, and the document; none and null where none is.</returns>
    public (LifterFields Fields, Stored? Document) Stamp(string lifter, FactId id, LifterFields fields)
    {
        var known = stamps.TryGetValue(lifter, out var held) ? held.Told : [];
        var newer = LifterFieldsOf.Each.Where(f => fields.HasFlag(f) && !(known.TryGetValue(f, out var by) && by.CompareTo(id) >= 0)).ToList();
        if (newer.Count == 0)
        {
            return (LifterFields.None, null);
        }

        var told = new Dictionary<LifterFields, FactId>(known);
        newer.ForEach(f => told[f] = id);
        var slot = new ShareSlot.Stamps(lifter, told);
        return (newer.Aggregate((a, b) => a | b), held.Told is null ? Put(slot) : Put(held.Slot, slot));
    }

    private List<Stored> Own(Entry entry, IHolding into)
    {
        if (entry is Entry.LifterKept { Id: { } id } kept && Stamp(kept.Lifter.Key, id, kept.Fields) is var (newer, stamped))
        {
            into.See(id);
            return stamped is null ? [] : [into.Take(kept)!.Value, stamped.Value, Stand(State), .. Announce(new LifterTold(id, kept.Lifter, newer))];
        }

        return into.Take(entry) is not { } stored ? [] : EventOf(entry, into) is { } one ? [stored, .. Announce(one)] : [stored];
    }

    private IReadOnlyList<Stored> Announce(GymEvent one) => State.Joined && !IsGone(one.Lifter) ? Wait(one) : [];

    private static GymEvent? EventOf(Entry entry, IHolding into) => entry switch
    {
        Entry.SessionBegun e => new SessionStarted(e.Head),
        Entry.FactAdded e => new SessionFact(into.LifterOf(e.Session)!, e.Session, e.Fact),
        Entry.WeightKept e => new OutsideWeight(e.Weight.Id, e.Weight.Lifter, e.Weight.Date, e.Weight.Weight),
        Entry.FactTold e => new OutsideFact(e.Told.Lifter, e.Told.Fact),
        _ => null,
    };

    private List<Stored> Leave()
    {
        List<Stored> changed = [.. waiting.Values.Select(w => w.Slot).ToList().Select(Release)];
        return [.. changed, Stand(State with { Joined = false, Whole = "" })];
    }

    private List<Stored> Sent(Entry.Sent sent)
    {
        List<Stored> changed = [.. waiting.Where(w => w.Key <= sent.Number).Select(w => w.Value.Slot).ToList().Select(Release)];
        return [.. changed, Stand(State with { Whole = sent.Whole })];
    }

    private List<Stored> Pull(Entry.Pulled pulled, IHolding into)
    {
        List<Stored> changed = [];
        foreach (var one in pulled.Events)
        {
            into.See(one.Id);
            changed.AddRange(Pull(one, into));
        }

        // A set's order does not matter, so the facts of a session are taken together: its document is made once.
        foreach (var facts in pulled.Events.OfType<SessionFact>().Where(e => !IsGone(e.Lifter)).GroupBy(e => e.Session))
        {
            changed.AddRange(into.Has(facts.Key) ? Taken(into.Take(facts.Key, [.. facts.Select(e => e.Fact)])) : facts.SelectMany(Keep));
        }

        return [.. changed, Stand(State with { Pulled = pulled.Position, Anchor = pulled.Last ?? State.Anchor })];
    }

    private IEnumerable<Stored> Pull(GymEvent one, IHolding into) => one switch
    {
        LifterErased e => Erase(e),
        _ when IsGone(one.Lifter) => [],
        LifterTold e => Pull(e, into),
        SessionStarted e => Begin(e, into),
        SessionFact => [],
        OutsideFact e => Taken(into.Take(new Entry.FactTold(new KeptFact(e.Lifter, e.Fact)))),
        OutsideWeight e => Taken(into.Take(new Entry.WeightKept(new KeptWeight(e.Id, e.Lifter, e.Date, e.Weight)))),
        _ => throw new ArgumentException($"cannot take {one.GetType()}", nameof(one)),
    };

    private IEnumerable<Stored> Pull(LifterTold told, IHolding into)
    {
        var (newer, stamped) = Stamp(told.Lifter, told.Id, told.Fields);
        return stamped is null ? [] :
        [
            stamped.Value,
            .. Taken(into.Take(new Entry.LifterKept(into.Lifter(told.Lifter) is { } here ? here.With(told.Told, newer) : told.Told))),
        ];
    }

    private List<Stored> Begin(SessionStarted begun, IHolding into)
    {
        List<Stored> changed = [.. Taken(into.Take(new Entry.SessionBegun(begun.Head)))];
        if (early.Remove(begun.Id, out var came))
        {
            changed.AddRange(Taken(into.Take(begun.Id, [.. came.Select(c => c.Event.Fact)])));
            changed.AddRange(came.Select(c => Release(c.Slot)).ToList());
        }

        return changed;
    }

    private IEnumerable<Stored> Keep(SessionFact one) =>
        early.TryGetValue(one.Session, out var came) && came.Exists(e => e.Event.Id == one.Id) ? [] : [Put(new ShareSlot.Early(one))];

    private static IEnumerable<Stored> Taken(Stored? stored) => stored is { } one ? [one] : [];

    private Stored Put(ShareSlot slot) => Put(free.TryPop(out var used) ? used : Shares.StateNumber + slots.Count + 1, slot);

    private Stored Put(long number, ShareSlot slot)
    {
        Hold(number, slot);
        State = State with { Slots = slots.Count };
        return Shares.Of(number, slot);
    }

    private Stored Release(long number)
    {
        switch (slots[number])
        {
            case ShareSlot.Waiting s:
                waiting.Remove(s.Number);
                break;
            case ShareSlot.Early s:
                early.GetValueOrDefault(s.Event.Session)?.RemoveAll(e => e.Slot == number);
                break;
            case ShareSlot.Stamps s:
                stamps.Remove(s.Lifter);
                break;
        }

        return Put(number, new ShareSlot.Free());
    }

    private void Hold(long number, ShareSlot slot)
    {
        slots[number] = slot;
        switch (slot)
        {
            case ShareSlot.Free:
                free.Push(number);
                break;
            case ShareSlot.Waiting s:
                waiting[s.Number] = (number, s.Event);
                break;
            case ShareSlot.Early s:
                (early.TryGetValue(s.Event.Session, out var came) ? came : early[s.Event.Session] = []).Add((number, s.Event));
                break;
            case ShareSlot.Stamps s:
                stamps[s.Lifter] = (number, new Dictionary<LifterFields, FactId>(s.Told));
                break;
            case ShareSlot.Gone s:
                gone[s.Event.Lifter] = s.Event;
                break;
        }
    }

    private static string LifterOf(ShareSlot slot) => slot switch
    {
        ShareSlot.Waiting s => s.Event.Lifter,
        ShareSlot.Early s => s.Event.Lifter,
        ShareSlot.Stamps s => s.Lifter,
        ShareSlot.Gone s => s.Event.Lifter,
        _ => throw new ArgumentException("a free slot is nobody's", nameof(slot)),
    };
}
