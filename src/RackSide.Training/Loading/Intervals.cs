namespace RackSide.Training.Loading;

/// <summary>
/// The best cost for each row of neighbouring sets above each state of the sleeve. A plate put on and later taken off lies
/// on the sleeve for a row of neighbouring sets, and because plates come off only at the outside any two such rows are
/// nested or apart. So the sets i to j above a state are either one set that the state itself serves, or two rows one
/// after the other, or all of them above one plate more.
/// </summary>
internal sealed class Intervals
{
    private static readonly PlanCost NotReckoned = new(-1, 0);

    private readonly ExactJob job;
    private readonly SleeveStates sleeve;
    private readonly int first;
    private readonly int sets;
    private readonly int kinds;
    private readonly PlanCost[] known;
    private readonly int[] next;
    private readonly long[] loads;
    private readonly PlanCost[] push;
    private readonly long[] ceiling;

    public Intervals(ExactJob job, SleeveStates sleeve)
    {
        (this.job, this.sleeve) = (job, sleeve);
        (next, loads, kinds) = (sleeve.Next.ToArray(), sleeve.Loads.ToArray(), job.Kinds.Length);
        first = job.Start.Length > 0 ? 1 : 0;
        sets = first + job.Sets.Length;
        push = new PlanCost[Row(sets - 1, sets - 1) + 1];
        ceiling = new long[push.Length];
        for (var i = 0; i < sets; i++)
        {
            var (high, times) = (long.MaxValue, 0);
            for (var j = i; j < sets; j++)
            {
                (high, times) = j < first ? (high, times) : (Math.Min(high, job.Sets[j - first].High), times + job.Sets[j - first].Times);
                ceiling[Row(i, j)] = high;
                push[Row(i, j)] = PlanCost.Of((i < first ? 0 : 1) + (j == sets - 1 && !job.StrippedAtEnd ? 0 : 1), times);
            }
        }

        known = new PlanCost[push.Length * loads.Length];
        Array.Fill(known, NotReckoned);
    }

    /// <summary>The cost of all sets from the start stack on.</summary>
    public PlanCost Whole => Best(0, sets - 1, 0);

    /// <summary>The stack of each set in the best plan, as kinds.</summary>
    public int[][] Stacks()
    {
        var stacks = new int[sets][];
        Follow(0, sets - 1, 0, [], stacks);
        return stacks[first..];
    }

    /// <summary>The number of the row of sets from i to j, no earlier than i.</summary>
    private int Row(int i, int j) => (i * ((2 * sets) - i - 1) / 2) + j;

    private PlanCost Best(int i, int j, int state)
    {
        var row = Row(i, j);
        if (loads[state] > ceiling[row])
        {
            return PlanCost.Never;
        }

        ref var cost = ref known[(row * loads.Length) + state];
        return cost.Plates >= 0 ? cost : cost = Reckoned(i, j, state);
    }

    private PlanCost Reckoned(int i, int j, int state)
    {
        var best = i == j ? Served(i, state) : PlanCost.Never;
        for (var k = i; k < j; k++)
        {
            if (Best(i, k, state) is { CanBe: true } before && Best(k + 1, j, state) is { CanBe: true } after)
            {
                best = Better(best, before + after);
            }
        }

        var (from, to) = Choices(i, state);
        for (var kind = from; kind < to; kind++)
        {
            if (After(i, state, kind) is var more && more >= 0 && Best(i, j, more) is { CanBe: true } above)
            {
                best = Better(best, above + push[Row(i, j)]);
            }
        }

        return best;
    }

    private static PlanCost Better(PlanCost a, PlanCost b) => b < a ? b : a;

    /// <summary>The cost of a set done with just what is on; before the first set only the start stack is on.</summary>
    private PlanCost Served(int set, int state)
    {
        if (set < first)
        {
            return state == sleeve.StartPath[^1] ? default : PlanCost.Never;
        }

        var band = job.Sets[set - first];
        return loads[state] < band.Low ? PlanCost.Never : new(0, job.Deviation(loads[state], band));
    }

    /// <summary>The kinds that may come next; a row that begins before the first set goes on along the start stack.</summary>
    private (int From, int To) Choices(int i, int state)
    {
        if (i >= first)
        {
            return (0, kinds);
        }

        var on = Array.IndexOf(sleeve.StartPath, state);
        return on < job.Start.Length ? (job.Start[on], job.Start[on] + 1) : (0, 0);
    }

    private int After(int i, int state, int kind) => i >= first
        ? next[(state * kinds) + kind]
        : sleeve.StartPath[Array.IndexOf(sleeve.StartPath, state) + 1];

    /// <summary>Finds the choices behind the best cost: of equally good ones a plate over the whole row before two rows, and the heaviest plate first.</summary>
    private void Follow(int i, int j, int state, int[] on, int[][] stacks)
    {
        var best = Best(i, j, state);
        if (i == j && Served(i, state) == best)
        {
            stacks[i] = on;
            return;
        }

        var (from, to) = Choices(i, state);
        for (var kind = from; kind < to; kind++)
        {
            if (After(i, state, kind) is var more && more >= 0 && Best(i, j, more) is { CanBe: true } above && above + push[Row(i, j)] == best)
            {
                Follow(i, j, more, [.. on, kind], stacks);
                return;
            }
        }

        var split = Enumerable.Range(i, j - i).First(k =>
            Best(i, k, state) is { CanBe: true } before && Best(k + 1, j, state) is { CanBe: true } after && before + after == best);
        Follow(i, split, state, on, stacks);
        Follow(split + 1, j, state, on, stacks);
    }
}
