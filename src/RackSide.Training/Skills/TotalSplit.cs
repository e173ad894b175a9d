namespace RackSide.Training.Skills;

/// <summary>One share of a total done today.</summary>
/// <param name="Asked">The reps suggested.</param>
/// <param name="Done">The reps done.</param>
/// <param name="Slipped">Whether the form was told to have slipped.</param>
public sealed record ShareDone(int Asked, int Done, bool Slipped = false);

/// <summary>
/// How many reps the next share of a total should have, so that form holds. The sets are planned that somebody would need
/// who goes to the limit in every one and tires little: 100, 80, 65 and then 60 in the hundred of the best set. The reps are
/// then dealt nearly evenly over so many sets, so that the first ones leave reps in reserve and the last ones are still clean.
/// Ours, no source; it is checked against simulated lifters, whom it costs no more sets than going to the limit every time
/// where a set far from the limit tires little, and never more than one more.
/// </summary>
public static class TotalSplit
{
    /// <summary>The first guess where no set is known: small enough that form holds. Common practice, no source.</summary>
    public const int FirstShare = 10;

    private const int Steady = 60;

    private static readonly int[] PercentOfBest = [100, 80, 65];

    /// <summary>The sets planned for a total: those of going to the limit and tiring little.</summary>
    /// <param name="total">The reps in all; 1 or more.</param>
    /// <param name="best">The best recent set; 1 or more.</param>
    public static int SetsFor(int total, int best)
    {
        var (sets, done) = (0, 0);
        while (done < total)
        {
            done += Math.Max(1, best * Percent(sets) / 100);
            sets++;
        }

        return sets;
    }

    /// <summary>The reps to suggest: at least 1, at most what is left, and never more than the best set.</summary>
    /// <param name="total">The reps in all; 1 or more.</param>
    /// <param name="best">The best recent set with honest form; null where none is known.</param>
    /// <param name="today">The shares done today, in order.</param>
    public static int Next(int total, int? best, IReadOnlyList<ShareDone> today)
    {
        var left = Math.Max(1, total - today.Sum(s => s.Done));
        return Math.Min(left, best is { } known and > 0 ? Dealt(total, left, known, today) : Again(today));
    }

    private static int Dealt(int total, int left, int best, IReadOnlyList<ShareDone> today)
    {
        var fewest = (left + best - 1) / best;
        var sets = Math.Max(fewest, SetsFor(total, best) - today.Count);
        var weights = Enumerable.Range(today.Count, sets).Select(Weight).ToList();
        var share = ((left * weights[0]) + weights.Sum() - 1) / weights.Sum();
        return Math.Max(1, Math.Min(Math.Min(share, best), Tired(today) ?? best));
    }

    /// <summary>How large a set is dealt: nearly even, the first ones a little more, because the body is fresh.</summary>
    private static int Weight(int set) => (3 * Percent(set)) + (7 * Steady);

    private static int Percent(int set) => set < PercentOfBest.Length ? PercentOfBest[set] : Steady;

    private static int Again(IReadOnlyList<ShareDone> today) => today.Count == 0 ? FirstShare
        : Math.Max(1, Tired(today) ?? today[^1].Done);

    /// <summary>What the last set that fell short, or slipped, showed to be the most for now; a later, larger one says better.</summary>
    private static int? Tired(IReadOnlyList<ShareDone> today)
    {
        int? most = null;
        foreach (var share in today)
        {
            most = share.Slipped ? Math.Max(1, share.Done - 1)
                : share.Done < share.Asked ? Math.Max(1, share.Done)
                : most is { } so ? Math.Max(so, share.Done)
                : null;
        }

        return most;
    }
}
