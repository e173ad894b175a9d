using System.Diagnostics;
using RackSide.Training.Measures;

namespace RackSide.Training.Strength;

/// <summary>
/// What a lifter might lift once, estimated from a set of more reps. An estimate, never something to try without a
/// qualified coach: the formulas differ by several per cent, and all fall short for the deadlift.
/// </summary>
public static class OneRepMaximum
{
    /// <summary>
    /// The most reps an estimate is made from. Beyond 12 the formulas part; 10 is safer (Reynolds, Gordon and Robergs,
    /// 2006, JSCR 20(3):584-592, advise no more than 10 in a linear equation).
    /// </summary>
    public const int MostReps = 12;

    /// <summary>The estimate of one formula.</summary>
    /// <param name="formula">Which formula.</param>
    /// <param name="load">The load lifted.</param>
    /// <param name="reps">Reps to near failure, 1 or more.</param>
    /// <returns>In the load's unit; the load itself at 1 rep, where most formulas would add to it; null above 12 reps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are no reps.</exception>
    public static Mass? By(RepFormula formula, Mass load, int reps)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(reps, 1);
        return reps switch
        {
            1 => load,
            <= MostReps => load * (decimal)Factor(formula, reps),
            _ => null,
        };
    }

    /// <summary>The lowest and the highest estimate of all formulas, which is what to show: no single one is to be trusted.</summary>
    /// <param name="load">The load lifted.</param>
    /// <param name="reps">Reps to near failure, 1 or more.</param>
    /// <returns>Null above 12 reps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are no reps.</exception>
    public static MaximumRange? Range(Mass load, int reps)
    {
        var estimates = Enum.GetValues<RepFormula>().Select(f => By(f, load, reps)).OfType<Mass>().ToList();
        return estimates.Count > 0 ? new(estimates.Min(), estimates.Max()) : null;
    }

    /// <summary>The formula read backwards: what could be lifted that many times by somebody whose one repetition is known.</summary>
    /// <param name="formula">Which formula.</param>
    /// <param name="maximum">The one-repetition maximum.</param>
    /// <param name="reps">Reps to near failure, 1 or more.</param>
    /// <returns>In the maximum's unit; the maximum itself at 1 rep; null above 12 reps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are no reps.</exception>
    public static Mass? LoadFor(RepFormula formula, Mass maximum, int reps)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(reps, 1);
        return reps switch
        {
            1 => maximum,
            <= MostReps => maximum with { Amount = maximum.Amount / (decimal)Factor(formula, reps) },
            _ => null,
        };
    }

    private static double Factor(RepFormula formula, int r) => formula switch
    {
        RepFormula.Epley => 1 + (r / 30.0),
        RepFormula.Brzycki => 36.0 / (37 - r),
        RepFormula.Lander => 100 / (101.3 - (2.67123 * r)),
        RepFormula.Lombardi => Math.Pow(r, 0.10),
        RepFormula.Mayhew => 100 / (52.2 + (41.9 * Math.Exp(-0.055 * r))),
        RepFormula.OConner => 1 + (0.025 * r),
        RepFormula.Wathen => 100 / (48.8 + (53.8 * Math.Exp(-0.075 * r))),
        _ => throw new UnreachableException(),
    };
}

/// <summary>The span of the estimates.</summary>
/// <param name="Lowest">The lowest estimate.</param>
/// <param name="Highest">The highest estimate; equal to the lowest at 1 rep.</param>
public sealed record MaximumRange(Mass Lowest, Mass Highest);
