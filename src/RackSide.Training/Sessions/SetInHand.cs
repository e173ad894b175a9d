using System.Diagnostics;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Sessions;

/// <summary>What ENTER would write now: asked for, changed, typed, in that order of precedence from the last to the first.</summary>
public static class SetInHand
{
    /// <summary>The first guess at a share of a total: small enough that form holds. Common practice, no source.</summary>
    public const int FirstShare = 10;

    /// <summary>The reps ENTER would write.</summary>
    public static int Reps(Session s, Lifting p) => TypedReps(p) ?? p.Reps ?? Asked(s);

    /// <summary>The load ENTER would write; null where the exercise has none.</summary>
    public static Mass? Load(Session s, Lifting p) => TypedLoad(s, p) ?? p.Load ?? AskedLoad(s);

    /// <summary>The reps asked for; of a total, the share suggested.</summary>
    public static int Asked(Session s) => s.Place.Current switch
    {
        SetItem set => set.Target,
        TotalItem total => Math.Min(total.Total - s.Place.Counted(total.Slot), LastShare(s, total) ?? FirstShare),
        _ => throw new UnreachableException(),
    };

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

    private static int? LastShare(Session s, TotalItem total) =>
        s.Place.Work(total.Slot).LastOrDefault()?.Set.Done is { } done and > 0 ? done : null;
}
