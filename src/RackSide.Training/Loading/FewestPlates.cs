namespace RackSide.Training.Loading;

/// <summary>Plans a row of sets so that the fewest plates are handled.</summary>
public static class FewestPlates
{
    /// <summary>
    /// The best plan: fewest plates handled on a sleeve, of these the fewest plates on, of these the least deviation from
    /// the ideals, of these the fewest sets over their ideal. What is then still equal goes to the plate that stays on
    /// longest, and to the heavier one.
    /// </summary>
    /// <remarks>
    /// It is exact. <see cref="Intervals"/> looks through every plan whose stacks hold at most so many new plates. A plan
    /// with a deeper stack handles each of them twice (once where the bar stays loaded), and each plate of the start stack
    /// once where the bar is stripped; so once the plan found costs less than that, no deeper one can equal it, and until
    /// then the stacks may be a plate deeper. Our own algorithm; checked against an integer programme and against a
    /// shortest path over ordered stacks.
    /// </remarks>
    /// <returns>The plan; null where a set's band holds no load that these plates make, or there are no sets.</returns>
    public static PlatePlan? For(PlateJob job)
    {
        if (job.Sets.Count == 0)
        {
            return null;
        }

        var exact = new ExactJob(job);
        var sleeve = new SleeveStates(exact);
        Intervals? rows = null;
        while (!IsSettled(exact, sleeve, rows is { Whole: { CanBe: true } best } ? best.Handled : null))
        {
            sleeve.Deepen();
            rows = EverySetIsMade(exact, sleeve) ? new Intervals(exact, sleeve) : null;
        }

        return rows is { Whole.CanBe: true } ? Told(exact, rows) : null;
    }

    /// <summary>Whether deeper stacks cannot lead to a better plan than the one found, which handles so many plates.</summary>
    internal static bool IsSettled(ExactJob job, SleeveStates sleeve, int? handled) =>
        (sleeve.Exhausted && sleeve.Depth > 0) || (handled is { } found && sleeve.Depth >= DeepestWorthwhile(job, found));

    /// <summary>The most new plates a stack can hold in a plan that handles no more than this.</summary>
    private static int DeepestWorthwhile(ExactJob job, int handled) =>
        job.StrippedAtEnd ? (handled - job.Start.Length) / 2 : handled;

    /// <summary>Whether each set can be made with the stacks made so far.</summary>
    internal static bool EverySetIsMade(ExactJob job, SleeveStates sleeve)
    {
        foreach (var set in job.Sets)
        {
            var made = false;
            foreach (var load in sleeve.Loads)
            {
                made |= load >= set.Low && load <= set.High;
            }

            if (!made)
            {
                return false;
            }
        }

        return true;
    }

    private static PlatePlan Told(ExactJob job, Intervals rows)
    {
        var stacks = rows.Stacks();
        return new(
            [.. job.SetOf.Select(set => stacks[set].Select(kind => job.Kinds[kind]).ToArray())],
            rows.Whole.Handled,
            rows.Whole.On,
            job.Kilograms(rows.Whole.Deviation));
    }
}
