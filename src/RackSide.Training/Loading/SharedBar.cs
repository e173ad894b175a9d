using NodaTime;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>
/// Two lifters, one bar: they take turns set by set. One goes twice in a row only where that spares plates and the rest
/// between those two sets is so short that nobody waits for it, and never three times; one begins out of turn only where
/// that spares plates. Strict turns give each a rest while the other lifts; a rest that is longer still runs on its own
/// clock. Decided here.
/// </summary>
public static class SharedBar
{
    /// <summary>The longest rest that lets a lifter go twice in a row while the other stands by.</summary>
    public static Duration LongestStandingBy { get; } = Duration.FromSeconds(60);

    /// <summary>
    /// The order of the sets still to do. Every order within the rule is planned with <see cref="FewestPlates"/> from what
    /// is on the bar now; the one that handles the fewest plates is taken, of these the one nearest to strict turns, then
    /// the one in which the first lifter begins.
    /// </summary>
    /// <param name="gym">The bar, the plates, what is on now and whether the bar is stripped; its own sets do not count.</param>
    /// <param name="first">Whose turn it is by the clock.</param>
    /// <param name="second">The other.</param>
    /// <param name="mayBegin">Whether the second may begin instead; not where the first has a set in hand.</param>
    /// <returns>The order; null where a set cannot be made or there is none.</returns>
    public static TurnOrder? Order(PlateJob gym, BarUser first, BarUser second, bool mayBegin = true)
    {
        BarUser[] both = [first, second];
        var orders = Orders(both, [], mayBegin)
            .Select(turns => (Turns: turns, Plan: FewestPlates.For(gym with { Sets = [.. turns.Select(t => both[t.Lifter].Sets[t.Set].Band)] })))
            .Where(o => o.Plan is not null)
            .Select(o => (o.Turns, Plan: o.Plan!))
            .ToList();
        if (orders.Count == 0)
        {
            return null;
        }

        var inTurn = orders.MinBy(o => (OutOfTurn(o.Turns, both), o.Turns[0].Lifter));
        var best = orders.MinBy(o => (o.Plan.Handled, OutOfTurn(o.Turns, both), o.Turns[0].Lifter, o.Plan.PlatesOn, o.Plan.DeviationKilograms));
        return new(best.Turns, best.Plan, Why(best.Turns, both, inTurn.Plan.Handled - best.Plan.Handled));
    }

    private static IEnumerable<IReadOnlyList<BarTurn>> Orders(BarUser[] both, IReadOnlyList<BarTurn> done, bool mayBegin)
    {
        var next = new[] { done.Count(t => t.Lifter == 0), done.Count(t => t.Lifter == 1) };
        if (next[0] == both[0].Sets.Count && next[1] == both[1].Sets.Count)
        {
            return done.Count > 0 ? [done] : [];
        }

        return
            from lifter in new[] { 0, 1 }
            where next[lifter] < both[lifter].Sets.Count && MayGo(lifter, next, both, done, mayBegin)
            from order in Orders(both, [.. done, new(lifter, next[lifter])], mayBegin)
            select order;
    }

    private static bool MayGo(int lifter, int[] next, BarUser[] both, IReadOnlyList<BarTurn> done, bool mayBegin)
    {
        if (next[1 - lifter] == both[1 - lifter].Sets.Count)
        {
            return true;
        }

        return done switch
        {
            [] => lifter == 0 || mayBegin,
            [.., var last] when last.Lifter != lifter => true,
            [.., var before, _] when before.Lifter == lifter => false,
            _ => both[lifter].Sets[next[lifter]].RestBefore <= LongestStandingBy,
        };
    }

    /// <summary>How often one goes again although the other has a set to do.</summary>
    private static int OutOfTurn(IReadOnlyList<BarTurn> turns, BarUser[] both) => Again(turns, both).Count();

    private static IEnumerable<BarTurn> Again(IReadOnlyList<BarTurn> turns, BarUser[] both) =>
        from i in Enumerable.Range(1, Math.Max(turns.Count - 1, 0))
        where turns[i].Lifter == turns[i - 1].Lifter
            && turns.Take(i).Count(t => t.Lifter != turns[i].Lifter) < both[1 - turns[i].Lifter].Sets.Count
        select turns[i];

    private static string Why(IReadOnlyList<BarTurn> turns, BarUser[] both, int spared)
    {
        if (both.FirstOrDefault(b => b.Sets.Count == 0) is { } gone)
        {
            return $"{gone.Name} has no set to do";
        }

        if (spared == 0)
        {
            return "in turn: no other order spares a plate";
        }

        var plates = $"{spared} {(spared == 1 ? "plate" : "plates")} fewer to handle on each side";
        var again = Again(turns, both).Select(t => both[t.Lifter].Name).Distinct().ToList();
        return again.Count > 0
            ? $"{string.Join(" and ", again)} {(again.Count == 1 ? "goes" : "go")} twice in a row: {plates}, and no rest is cut short"
            : $"{both[turns[0].Lifter].Name} begins: {plates}";
    }
}
