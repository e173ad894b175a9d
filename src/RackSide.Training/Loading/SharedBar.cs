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
    /// The order of the sets still to do, from what is on the bar now: of all orders within the rule the one that handles
    /// the fewest plates, of these the one nearest to strict turns, then the one in which the first lifter begins. It is
    /// exact, as <see cref="FewestPlates"/> is for one order.
    /// </summary>
    /// <param name="gym">The bar, the plates, what is on now and whether the bar is stripped; its own sets do not count.</param>
    /// <param name="first">Whose turn it is by the clock.</param>
    /// <param name="second">The other.</param>
    /// <param name="mayBegin">Whether the second may begin instead; not where the first has a set in hand.</param>
    /// <param name="run">How many sets the second has just done one after the other; 0 where nobody has lifted yet.</param>
    /// <returns>The order; null where a set cannot be made or there is none.</returns>
    public static TurnOrder? Order(PlateJob gym, BarUser first, BarUser second, bool mayBegin = true, int run = 0)
    {
        BarUser[] both = [first, second];
        var sets = both.SelectMany(b => b.Sets).Select(s => s.Band).ToList();
        if (sets.Count == 0 || Search(gym with { Sets = sets }, both, mayBegin, run) is not { } found)
        {
            return null;
        }

        var (best, inTurn) = (Plan(gym, both, found.Best), Plan(gym, both, TurnSearch.InTurn(both)));
        return new(found.Best, best, Why(found.Best, both, inTurn.Handled - best.Handled, run));
    }

    private static PlatePlan Plan(PlateJob gym, BarUser[] both, IEnumerable<BarTurn> turns) =>
        FewestPlates.For(gym with { Sets = [.. turns.Select(t => both[t.Lifter].Sets[t.Set].Band)] })!;

    /// <summary>Stacks are made deeper until no deeper one can pay, as for one order; once an order is found, in one go.</summary>
    private static TurnSearch? Search(PlateJob job, BarUser[] both, bool mayBegin, int run)
    {
        var exact = new ExactJob(job);
        ExactBand[] kinds = [.. exact.Sets.Select(s => s with { Times = 1 }).Distinct()];
        int[] all = [.. exact.SetOf.Select(set => Array.IndexOf(kinds, exact.Sets[set] with { Times = 1 }))];
        int[][] bands = [all[..both[0].Sets.Count], all[both[0].Sets.Count..]];
        var sleeve = new SleeveStates(exact);
        TurnSearch? found = null;
        while (!FewestPlates.IsSettled(exact, sleeve, found?.Handled))
        {
            do
            {
                sleeve.Deepen();
            }
            while (found is not null && !FewestPlates.IsSettled(exact, sleeve, found.Handled));

            found = FewestPlates.EverySetIsMade(exact, sleeve)
                ? new(both, bands, new TurnRows(exact, sleeve, kinds), exact.Start.Length, mayBegin, run)
                : null;
        }

        return found;
    }

    /// <summary>The sets in which one goes again although the other has one to do.</summary>
    private static IEnumerable<BarTurn> Again(IReadOnlyList<BarTurn> turns, BarUser[] both, int run) =>
        from i in Enumerable.Range(0, turns.Count)
        where (i > 0 ? turns[i].Lifter == turns[i - 1].Lifter : run > 0 && turns[i].Lifter == 1)
            && turns.Take(i).Count(t => t.Lifter != turns[i].Lifter) < both[1 - turns[i].Lifter].Sets.Count
        select turns[i];

    private static string Why(IReadOnlyList<BarTurn> turns, BarUser[] both, int spared, int run)
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
        var again = Again(turns, both, run).Select(t => both[t.Lifter].Name).Distinct().ToList();
        return again.Count > 0
            ? $"{string.Join(" and ", again)} {(again.Count == 1 ? "goes" : "go")} twice in a row: {plates}, and no rest is cut short"
            : $"{both[turns[0].Lifter].Name} begins: {plates}";
    }
}
