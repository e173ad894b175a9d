using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Loading;

/// <summary>
/// The warm-up sets that lead to the first working set. Common practice, no source: the bar for 10, then 50 % for 5, 70 %
/// for 3 and 85 % for 2 of the working load; short, 50 % for 5 and 75 % for 3. Every load is rounded down to one that the
/// kit can give, is lighter than the working load, and comes once.
/// </summary>
public static class Ramps
{
    private static readonly (decimal Share, int Reps)[] FullSteps = [(0.5m, 5), (0.7m, 3), (0.85m, 2)];

    private static readonly (decimal Share, int Reps)[] ShortSteps = [(0.5m, 5), (0.75m, 3)];

    /// <summary>The ramp of an exercise.</summary>
    /// <remarks>
    /// Barbell: all sets use the bar of the working set, so that nobody changes bars; sets at or under the empty bar fall
    /// away. A full ramp begins with the empty bar, and up to one and a half bars that set is all of it. A short ramp is
    /// the empty bar for 5 where nothing else is left. A working load that is the empty bar has no ramp.
    /// Dumbbells and stack: the same shares without the bar.
    /// Hung weight, help and the body alone have none: a share of what hangs says little about the whole load.
    /// </remarks>
    /// <param name="kind">Which ramp the slot asks for.</param>
    /// <param name="work">The working load.</param>
    /// <param name="exercise">What it is for.</param>
    /// <param name="loads">The loads that can be had for it.</param>
    /// <param name="kit">The gym, for its bars.</param>
    /// <returns>The sets, lightest first; empty where there is nothing to ramp.</returns>
    public static IReadOnlyList<RampSet> For(RampKind kind, Mass work, Exercise exercise, ReachableLoads loads, GymKit kit) =>
        (kind, exercise.LoadType) switch
        {
            (RampKind.None, _) => [],
            (_, LoadType.Barbell) => OnBar(kind, work, loads, new BarTable(kit)),
            (_, LoadType.DumbbellPair or LoadType.DumbbellSingle or LoadType.MachineStack) =>
                Climb(kind, work, [.. loads.All.Where(l => l.Amount > 0)]),
            _ => [],
        };

    private static IReadOnlyList<RampSet> OnBar(RampKind kind, Mass work, ReachableLoads loads, BarTable table)
    {
        if (table.BarFor(work) is not { } bar || work <= bar.Mass)
        {
            return [];
        }

        var climb = Climb(kind, work, [.. loads.All.Where(l => l > bar.Mass && table.At(l)?.Bar == bar)]);
        return kind switch
        {
            RampKind.Full when work.Kilograms <= 1.5m * bar.Mass.Kilograms => [new(bar.Mass, 10)],
            RampKind.Full => [new(bar.Mass, 10), .. climb],
            _ => climb.Count > 0 ? climb : [new(bar.Mass, 5)],
        };
    }

    private static IReadOnlyList<RampSet> Climb(RampKind kind, Mass work, IReadOnlyList<Mass> loads)
    {
        List<RampSet> sets = [];
        foreach (var (share, reps) in kind == RampKind.Full ? FullSteps : ShortSteps)
        {
            var fitting = loads.Where(l => l <= work * share).ToList();
            if (fitting.Count > 0 && (sets.Count == 0 || fitting[^1] > sets[^1].Load))
            {
                sets.Add(new(fitting[^1], reps));
            }
        }

        return sets;
    }
}
