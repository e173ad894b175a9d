namespace RackSide.Training.Loading;

/// <summary>
/// The best cost of rows of sets, as <see cref="Intervals"/> reckons it, but for many orders of the same sets at once. A row
/// is known by what it holds and not by where it stands, so whatever two orders have in common is reckoned once; the
/// working sets of two lifters in turn are the same few rows in every order.
/// </summary>
internal sealed class TurnRows
{
    /// <summary>The row with nothing in it, in the midst of an order.</summary>
    public const int Nothing = 0;

    /// <summary>The same at the end of an order whose bar stays loaded.</summary>
    private const int LeftLoaded = 1;

    private const int StartStack = -1;

    private static readonly PlanCost NotReckoned = new(-1, 0);

    private readonly ExactJob job;
    private readonly UsefulStates states;
    private readonly ExactBand[] bands;
    private readonly Dictionary<(int Band, int Tail), int> numbers = [];
    private readonly List<Row> rows = [new(0, 0, 0, long.MaxValue, 0, default), new(0, 0, 0, long.MaxValue, 0, default)];

    public TurnRows(ExactJob job, SleeveStates sleeve, ExactBand[] bands)
    {
        (this.job, this.bands, states) = (job, bands, new UsefulStates(job, sleeve, bands));
        End = job.StrippedAtEnd ? Nothing : LeftLoaded;
    }

    /// <summary>The row that every order ends with.</summary>
    public int End { get; }

    /// <summary>The row that begins with a set and goes on with another row.</summary>
    public int With(int band, int rest)
    {
        if (!numbers.TryGetValue((band, rest), out var number))
        {
            numbers[(band, rest)] = number = rows.Count;
            rows.Add(Made(band, rest));
        }

        return number;
    }

    /// <summary>The cost of a row from the bare bar.</summary>
    public PlanCost FromBare(int row) => Best(row, 0);

    /// <summary>The cost of a whole order from the start stack.</summary>
    public PlanCost FromStart(int row) => job.Start.Length == 0 ? Best(row, 0) : Best(With(StartStack, row), 0);

    private Row Made(int band, int rest)
    {
        var after = rows[rest];
        var (high, count) = band == StartStack ? (after.Ceiling, after.Sets) : (Math.Min(after.Ceiling, bands[band].High), after.Sets + 1);
        var handled = (band == StartStack ? 0 : 1) + (EndsLoaded(rest) ? 0 : 1);
        var sets = after.Bands | (band == StartStack ? 0 : UsefulStates.Bit(band));
        return new(band, rest, after.Length + 1, high, sets, PlanCost.Of(handled, count))
        {
            Sets = count,
            Known = [.. Enumerable.Repeat(NotReckoned, states.Count)],
        };
    }

    private bool EndsLoaded(int row)
    {
        while (rows[row].Length > 0)
        {
            row = rows[row].Rest;
        }

        return row == LeftLoaded;
    }

    private PlanCost Best(int row, int state)
    {
        var of = rows[row];
        return states.Loads[state] > of.Ceiling || (of.Bands & ~states.Serves[state]) != 0 ? PlanCost.Never
            : of.Known[state].Plates >= 0 ? of.Known[state]
            : of.Known[state] = Reckoned(of, row, state);
    }

    private PlanCost Reckoned(Row of, int row, int state)
    {
        var best = of.Length == 1 ? Served(of.Band, state) : PlanCost.Never;
        for (var (count, tail) = (1, of.Rest); count < of.Length; (count, tail) = (count + 1, rows[tail].Rest))
        {
            if (Best(Head(row, count), state) is { CanBe: true } before && Best(tail, state) is { CanBe: true } after)
            {
                best = Better(best, before + after);
            }
        }

        foreach (var more in After(of.Band, state))
        {
            if (more >= 0 && Best(row, more) is { CanBe: true } above)
            {
                best = Better(best, above + of.Push);
            }
        }

        return best;
    }

    private static PlanCost Better(PlanCost a, PlanCost b) => b < a ? b : a;

    /// <summary>The first so many sets of a row, as a row in the midst of an order.</summary>
    private int Head(int row, int count)
    {
        var heads = rows[row].Heads ??= new int[rows[row].Length];
        return count == 0 ? Nothing
            : heads[count] > 0 ? heads[count]
            : heads[count] = With(rows[row].Band, Head(rows[row].Rest, count - 1));
    }

    private PlanCost Served(int band, int state) => band == StartStack
        ? state == states.StartPath[^1] ? default : PlanCost.Never
        : states.Loads[state] < bands[band].Low ? PlanCost.Never : new(0, job.Deviation(states.Loads[state], bands[band]));

    /// <summary>The states a plate further; before the first set only those along the start stack.</summary>
    private ReadOnlySpan<int> After(int band, int state)
    {
        if (band != StartStack)
        {
            return states.After(state);
        }

        var on = Array.IndexOf(states.StartPath, state);
        return on >= 0 && on < job.Start.Length ? states.StartPath.AsSpan(on + 1, 1) : [];
    }

    private sealed record Row(int Band, int Rest, int Length, long Ceiling, ulong Bands, PlanCost Push)
    {
        public int Sets { get; init; }

        public PlanCost[] Known { get; init; } = [];

        public int[]? Heads { get; set; }
    }
}
