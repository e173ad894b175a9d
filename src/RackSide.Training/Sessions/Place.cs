using RackSide.Training.History;
using RackSide.Training.Safety;

namespace RackSide.Training.Sessions;

/// <summary>Where a session stands: folded from its facts, so that a resumed session stands where the stopped one did.</summary>
public sealed record Place
{
    private Place(IReadOnlyList<CheckItem> checks, SessionRecord record)
    {
        var searching = new Searching(record);
        Prescriptions = [.. record.Prescriptions.Select(searching.Settled)];
        (Agenda, Sets, LeftOut) = (Sessions.Agenda.For(checks, Prescriptions, searching), record.Sets, record.LeftOut);
        Ticked = record.Standing.OfType<ItemTicked>().Select(t => t.Item).ToHashSet();
        doneSets = Sets.Select(s => (s.Set.Slot, s.Set.Kind, s.Set.Number, s.Set.Side)).ToHashSet();
        answered = record.Standing.OfType<RepsLeftTold>().Select(t => t.Set).ToHashSet();
        started = Sets.Where(s => s.Set.Kind != SetKind.WarmUp).Select(s => s.Set.Slot).ToHashSet();
        Index = Agenda.TakeWhile(IsPast).Count();
    }

    private readonly HashSet<(string Slot, SetKind Kind, int Number, Side? Side)> doneSets;
    private readonly HashSet<string> started;
    private readonly HashSet<FactId> answered;

    /// <summary>What each slot asks for after swaps and with the loads that searches found, in order.</summary>
    public IReadOnlyList<Prescription> Prescriptions { get; }

    /// <summary>All items, in order.</summary>
    public IReadOnlyList<AgendaItem> Agenda { get; }

    /// <summary>The sets that stand.</summary>
    public IReadOnlyList<SetResult> Sets { get; }

    /// <summary>The slots left out.</summary>
    public IReadOnlySet<string> LeftOut { get; }

    /// <summary>The items ticked: names of checks, keys of slots.</summary>
    public IReadOnlySet<string> Ticked { get; }

    /// <summary>How many items are past.</summary>
    public int Index { get; }

    /// <summary>The item in hand; null when all are past.</summary>
    public AgendaItem? Current => Index < Agenda.Count ? Agenda[Index] : null;

    /// <summary>Where a session stands.</summary>
    public static Place Of(IReadOnlyList<CheckItem> checks, SessionRecord record) =>
        new(checks, record);

    /// <summary>The reps of a total done so far.</summary>
    public int Counted(string slot) => Sets.Where(s => s.Set.Slot == slot && s.Set.Kind == SetKind.Share).Sum(s => s.Set.Done);

    /// <summary>The seconds of a slot by time done so far.</summary>
    public int Held(string slot) => Sets.Where(s => s.Set.Slot == slot && s.Set.Kind == SetKind.HeldShare).Sum(s => s.Set.Done);

    /// <summary>The sets of a slot that stand, without its warm-up.</summary>
    public IEnumerable<SetResult> Work(string slot) => Sets.Where(s => s.Set.Slot == slot && s.Set.Kind != SetKind.WarmUp);

    /// <summary>
    /// Whether an item needs nothing more: done, ticked (any slot may be, by who wants no numbers), or left out. A ramp is past once a working set of its slot
    /// stands, so that a swap in mid slot does not send the lifter back to the empty bar; what is confirmed before the
    /// first set is past once one stands, so that a session goes on at its set even where the kit was changed meanwhile.
    /// </summary>
    public bool IsPast(AgendaItem item) => item switch
    {
        ConfirmItem confirm => Sets.Count > 0 || Ticked.Contains(confirm.Check.Key),
        SlotItem of when LeftOut.Contains(of.Slot) || Ticked.Contains(of.Slot) => true,
        AskItem ask => started.Contains(ask.Slot) || answered.Contains(ask.Set),
        RampItem ramp => started.Contains(ramp.Slot) || IsDone(ramp),
        SetItem set => IsDone(set),
        TotalItem total => Counted(total.Slot) >= total.Total,
        AccumulateItem time => Held(time.Slot) >= time.Total,
        TickItem => false,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private bool IsDone(SetItem set) =>
        doneSets.Contains((set.Slot, set.Kind, set.Number, (set as HoldItem)?.Side)) || doneSets.Contains((set.Slot, set.Kind, set.Number, null));
}
