using RackSide.Training.Measures;

namespace RackSide.Training.Strength;

/// <summary>
/// A load to work with, from a set the lifter knows ("60 kg for 8"). Each formula and each table is read forwards from
/// the known set and backwards to the reps wanted, and the lowest answer counts: a first load that is too light costs a
/// week, one that is too heavy costs more. It is not a maximum, and nobody should try for one alone.
/// </summary>
public static class WorkingLoad
{
    /// <summary>The cautious load for some reps with some more in reserve, before it is rounded down to what the kit gives.</summary>
    /// <param name="known">The load of the known set.</param>
    /// <param name="knownReps">Its reps, 1 to 12.</param>
    /// <param name="reps">Reps wanted in a set, 1 or more.</param>
    /// <param name="inReserve">Good reps that are to be left after the set, 0 or more.</param>
    /// <returns>
    /// In the unit of <paramref name="known"/>. Null where nothing can be said: a known set above 12 reps, or more than 15
    /// wanted and in reserve together (from 13 on only the handbook's last row speaks).
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">There are no reps, or less than none in reserve.</exception>
    public static Mass? From(Mass known, int knownReps, int reps, int inReserve)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(knownReps, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(reps, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(inReserve);
        if (knownReps > OneRepMaximum.MostReps)
        {
            return null;
        }

        var answers = ByFormulas(known, knownReps, reps + inReserve).Concat(ByTables(known, knownReps, reps + inReserve)).ToList();
        return answers.Count > 0 ? answers.Min() : null;
    }

    private static IEnumerable<Mass> ByFormulas(Mass known, int knownReps, int reps) =>
        Enum.GetValues<RepFormula>()
            .Select(f => OneRepMaximum.By(f, known, knownReps) is { } max ? OneRepMaximum.LoadFor(f, max, reps) : null)
            .OfType<Mass>();

    private static IEnumerable<Mass> ByTables(Mass known, int knownReps, int reps) =>
        Enum.GetValues<RepTable>()
            .Select(t => PercentOfMaximum.MaximumBy(t, known, knownReps) is { } max && PercentOfMaximum.For(t, reps) is { } percent
                ? max * (percent / 100m)
                : (Mass?)null)
            .OfType<Mass>();
}
