using System.Diagnostics;
using RackSide.Training.Measures;

namespace RackSide.Training.Strength;

/// <summary>What share of a one-repetition maximum can be lifted for so many reps, by the printed tables.</summary>
public static class PercentOfMaximum
{
    /// <summary>The last row there is.</summary>
    public const int MostReps = 15;

    private static readonly IReadOnlyList<int> OneToTen = [100, 95, 93, 90, 87, 85, 83, 80, 77, 75];

    /// <summary>The share for a number of reps. Where a table has no such row, the next row with more reps and less load.</summary>
    /// <param name="table">Which table.</param>
    /// <param name="reps">Reps to failure in a single set, 1 or more.</param>
    /// <returns>Per cent, 100 at 1 rep; null beyond the table's last row (15 in the handbook, 12 in the chart).</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are no reps.</exception>
    public static int? For(RepTable table, int reps)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(reps, 1);
        return reps <= OneToTen.Count ? OneToTen[reps - 1] : Beyond(table, reps);
    }

    /// <summary>
    /// The share for reps that leave some in reserve: the row of both together. The published scale of reps in reserve
    /// (Zourdos et al., 2016, JSCR 30(1):267-275) gives no shares; this look-up is common practice without a source.
    /// </summary>
    /// <param name="table">Which table.</param>
    /// <param name="reps">Reps to do, 1 or more.</param>
    /// <param name="inReserve">Reps that are to be left, 0 or more.</param>
    /// <returns>Per cent; null beyond the table's last row.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are no reps, or less than none in reserve.</exception>
    public static int? For(RepTable table, int reps, int inReserve)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(reps, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(inReserve);
        return For(table, reps + inReserve);
    }

    /// <summary>The one-repetition maximum that a set to near failure speaks of, by a table.</summary>
    /// <returns>In the load's unit; null beyond the table's last row.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are no reps.</exception>
    public static Mass? MaximumBy(RepTable table, Mass load, int reps) =>
        For(table, reps) is { } percent ? load with { Amount = load.Amount * 100 / percent } : null;

    private static int? Beyond(RepTable table, int reps) => (table, reps) switch
    {
        (RepTable.Handbook, 11) => 70,
        (RepTable.Handbook, 12) => 67,
        (RepTable.Handbook, <= MostReps) => 65,
        (RepTable.OnePageChart, <= 12) => 70,
        (RepTable.Handbook or RepTable.OnePageChart, _) => null,
        _ => throw new UnreachableException(),
    };
}
