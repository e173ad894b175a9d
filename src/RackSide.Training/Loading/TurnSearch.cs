namespace RackSide.Training.Loading;

/// <summary>
/// Looks through the orders of two lifters' sets from the last set backwards. What is done later costs at least as much
/// within the whole order as it would from a bare bar, less the plates of the start stack; so an end that already costs more
/// than the best order found is not looked at further.
/// </summary>
internal sealed class TurnSearch
{
    private readonly BarUser[] both;
    private readonly int[][] bands;
    private readonly int run;
    private readonly bool mayBegin;
    private readonly TurnRows rows;
    private readonly int startPlates;
    private readonly Stack<BarTurn> turns = new();

    /// <summary>Looks through them.</summary>
    /// <param name="both">The lifters; who is in turn first.</param>
    /// <param name="bands">For each set of each lifter its number in <paramref name="rows"/>.</param>
    /// <param name="rows">What rows of sets cost.</param>
    /// <param name="startPlates">The plates on a sleeve before the first set.</param>
    /// <param name="mayBegin">Whether the second may begin.</param>
    /// <param name="run">How many sets the second has just done one after the other.</param>
    public TurnSearch(BarUser[] both, int[][] bands, TurnRows rows, int startPlates, bool mayBegin, int run)
    {
        (this.both, this.bands, this.rows, this.startPlates, this.mayBegin, this.run) = (both, bands, rows, startPlates, mayBegin, run);
        Best = [.. InTurn(both)];
        Handled = rows.FromStart(Best.Reverse().Aggregate(rows.End, (row, t) => rows.With(bands[t.Lifter][t.Set], row))).Handled;
        Extend(both[0].Sets.Count, both[1].Sets.Count, rows.End, 0);
    }

    /// <summary>The best order.</summary>
    public IReadOnlyList<BarTurn> Best { get; private set; }

    /// <summary>The plates it handles on each side.</summary>
    public int Handled { get; private set; }

    private int OutOfTurn { get; set; }

    /// <summary>Strict turns, the first lifter first; who has more sets goes on alone.</summary>
    public static IEnumerable<BarTurn> InTurn(BarUser[] both) =>
        from set in Enumerable.Range(0, Math.Max(both[0].Sets.Count, both[1].Sets.Count))
        from lifter in new[] { 0, 1 }
        where set < both[lifter].Sets.Count
        select new BarTurn(lifter, set);

    /// <summary>Puts a set more before those chosen.</summary>
    /// <param name="firsts">The first lifter's sets that still want a place.</param>
    /// <param name="seconds">The second's.</param>
    /// <param name="row">Those that have one.</param>
    /// <param name="outOfTurn">How often among them one goes again although the other has a set to do.</param>
    private void Extend(int firsts, int seconds, int row, int outOfTurn)
    {
        if (row != rows.End && !IsBetter(rows.FromBare(row).Handled - startPlates, outOfTurn, lifter: 0))
        {
            return;
        }

        if (firsts + seconds == 0)
        {
            Offer(row, outOfTurn);
            return;
        }

        var inTurn = turns.TryPeek(out var head) ? 1 - head.Lifter : firsts > seconds ? 0 : 1;
        Before(inTurn, firsts, seconds, row, outOfTurn);
        Before(1 - inTurn, firsts, seconds, row, outOfTurn);
    }

    private void Before(int lifter, int firsts, int seconds, int row, int outOfTurn)
    {
        var set = (lifter == 0 ? firsts : seconds) - 1;
        if (set < 0 || !MayGoBefore(lifter, out var again))
        {
            return;
        }

        turns.Push(new(lifter, set));
        Extend(firsts - (lifter == 0 ? 1 : 0), seconds - lifter, rows.With(bands[lifter][set], row), outOfTurn + (again ? 1 : 0));
        turns.Pop();
    }

    /// <summary>Whether a lifter may lift just before the sets chosen so far.</summary>
    /// <param name="lifter">Who.</param>
    /// <param name="again">Whether the set after it then is one out of turn.</param>
    private bool MayGoBefore(int lifter, out bool again)
    {
        again = turns.TryPeek(out var head) && head.Lifter == lifter && OtherComes(lifter, 0);
        return !again || (RestsShort(head) && !(turns.ElementAtOrDefault(1) is var third && turns.Count > 1 && third.Lifter == lifter && OtherComes(lifter, 1)));
    }

    /// <summary>Whether the other still has a set among those chosen, from a place on.</summary>
    private bool OtherComes(int lifter, int from) => turns.Skip(from).Any(t => t.Lifter != lifter);

    private bool RestsShort(BarTurn turn) => both[turn.Lifter].Sets[turn.Set].RestBefore <= SharedBar.LongestStandingBy;

    private void Offer(int row, int outOfTurn)
    {
        var head = turns.Peek();
        if (head.Lifter == 1 && both[0].Sets.Count > 0)
        {
            if (!mayBegin || run > 1 || (run == 1 && (!RestsShort(head) || (turns.ElementAtOrDefault(1).Lifter == 1 && turns.Count > 1 && OtherComes(1, 1)))))
            {
                return;
            }

            outOfTurn += run;
        }

        var handled = rows.FromStart(row).Handled;
        if (IsBetter(handled, outOfTurn, head.Lifter))
        {
            (Best, Handled, OutOfTurn) = ([.. turns], handled, outOfTurn);
        }
    }

    private bool IsBetter(int handled, int outOfTurn, int lifter) =>
        (handled, outOfTurn, lifter).CompareTo((Handled, OutOfTurn, Best[0].Lifter)) < 0;
}
