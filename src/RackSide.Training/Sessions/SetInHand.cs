using System.Diagnostics;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Skills;

namespace RackSide.Training.Sessions;

/// <summary>What ENTER would write now: asked for, changed, typed, in that order of precedence from the last to the first.</summary>
public static class SetInHand
{
    /// <summary>The reps ENTER would write.</summary>
    public static int Reps(Session s, Lifting p) => TypedReps(p) ?? p.Reps ?? Asked(s);

    /// <summary>The load ENTER would write; null where the exercise has none.</summary>
    public static Mass? Load(Session s, Lifting p) => TypedLoad(s, p) ?? p.Load ?? AskedLoad(s);

    /// <summary>The reps asked for; of a total, the share suggested.</summary>
    public static int Asked(Session s) => s.Place.Current switch
    {
        SetItem set => set.Target,
        TotalItem total => TotalSplit.Next(
            total.Total, Best(s), [.. s.Place.Work(total.Slot).Select(r => new ShareDone(r.Set.Target, r.Set.Done, r.FormSlipped))]),
        _ => throw new UnreachableException(),
    };

    /// <summary>The best recent set of the exercise in hand before today; null where none is known.</summary>
    public static int? Best(Session s) => s.Place.Current is SlotItem item ? BestSet.Reps(s.Setting.Before, item.Asked.Exercise, s.Head.Date) : null;

    /// <summary>The load asked for, or the one the lifter chose for the set before in this slot; null where there is none.</summary>
    public static Mass? AskedLoad(Session s) => AskedLoad(s.Place, s.Place.Current);

    internal static Mass? AskedLoad(Place place, AgendaItem? item) => item switch
    {
        WorkItem work => place.Work(work.Slot).LastOrDefault(w => w.Set.Exercise == work.Asked.Exercise)?.Set.Load ?? work.Load,
        SetItem set => set.Load,
        _ => null,
    };

    /// <summary>The loads this kit can give the exercise in hand, or null.</summary>
    public static ReachableLoads? Loads(Session s) => s.Place.Current is SlotItem item
        ? s.Setting.Loads.For(s.Setting.Catalogue[item.Asked.Exercise])
        : null;

    internal static int? TypedReps(Lifting p) =>
        p.Field == Field.Reps && NumberEntry.Parse(p.Typed) is { } reps ? (int)reps : null;

    internal static Mass? TypedLoad(Session s, Lifting p) =>
        p.Field == Field.Load && NumberEntry.Parse(p.Typed) is { } amount && AskedLoad(s) is { } asked ? asked with { Amount = amount } : null;
}
