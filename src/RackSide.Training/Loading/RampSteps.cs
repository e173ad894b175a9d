using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Loading;

/// <summary>One step of the ramp's rule.</summary>
/// <param name="Load">The rule's own load: its share of the working load, rounded down to one that can be had.</param>
/// <param name="Reps">How many reps.</param>
/// <param name="Band">The loads that will do instead where they save plates.</param>
public sealed record RampStep(Mass Load, int Reps, LoadBand Band);

/// <summary>
/// The rule of the warm-up sets that lead to the first working set. Common practice, no source: the bar for 10, then 50 %
/// for 5, 70 % for 3 and 85 % for 2 of the working load; short, 50 % for 5 and 75 % for 3. Every load is rounded down to
/// one that the kit can give, is lighter than the working load, and comes once.
/// </summary>
public static class RampSteps
{
    /// <summary>How far a warm-up load may be from its share, as a part of the working load. Decided here: 5 points.</summary>
    private const decimal Leeway = 0.05m;

    private static readonly (decimal Share, int Reps)[] FullSteps = [(0.5m, 5), (0.7m, 3), (0.85m, 2)];

    private static readonly (decimal Share, int Reps)[] ShortSteps = [(0.5m, 5), (0.75m, 3)];

    /// <summary>The steps for an exercise.</summary>
    /// <remarks>
    /// Barbell: all sets use the bar of the working set, so that nobody changes bars; sets at or under the empty bar fall
    /// away. A full ramp begins with the empty bar, and up to one and a half bars that set is all of it. A short ramp is
    /// the empty bar for 5 where nothing else is left. A working load that is the empty bar has no ramp.
    /// Dumbbells and stack: the same shares without the bar.
    /// Hung weight, help and the body alone have none: a share of what hangs says little about the whole load.
    /// The bands hold loads of the kit, lie one above the other, over the empty bar and under the working load. Where none
    /// of the kit's loads is within the leeway, or only such as belong to the next step, the band is the rule's own load.
    /// </remarks>
    /// <param name="kind">Which ramp the slot asks for.</param>
    /// <param name="work">The working load.</param>
    /// <param name="exercise">What it is for.</param>
    /// <param name="loads">The loads that can be had for it.</param>
    /// <param name="kit">The gym, for its bars.</param>
    /// <returns>The steps, lightest first; empty where there is nothing to ramp.</returns>
    public static IReadOnlyList<RampStep> For(RampKind kind, Mass work, Exercise exercise, ReachableLoads loads, GymKit kit) =>
        For(kind, work, exercise, loads, new BarTable(kit, exercise));

    /// <summary>The same with the table of its bars at hand.</summary>
    internal static IReadOnlyList<RampStep> For(RampKind kind, Mass work, Exercise exercise, ReachableLoads loads, BarTable table) =>
        (kind, exercise.LoadType) switch
        {
            (RampKind.None, _) => [],
            (_, LoadType.Barbell) => OnBar(kind, work, loads, table),
            (_, LoadType.DumbbellPair or LoadType.DumbbellSingle or LoadType.MachineStack) =>
                Climb(kind, work, [.. loads.All.Where(l => l.Amount > 0)]),
            _ => [],
        };

    private static IReadOnlyList<RampStep> OnBar(RampKind kind, Mass work, ReachableLoads loads, BarTable table)
    {
        if (table.BarFor(work) is not { } bar || work <= bar.Mass)
        {
            return [];
        }

        var climb = Climb(kind, work, [.. loads.All.Where(l => l > bar.Mass && l < work && table.At(l)?.Bar == bar)]);
        return kind switch
        {
            RampKind.Full when work.Kilograms <= 1.5m * bar.Mass.Kilograms => [Bare(bar, 10)],
            RampKind.Full => [Bare(bar, 10), .. climb],
            _ => climb.Count > 0 ? climb : [Bare(bar, 5)],
        };
    }

    private static RampStep Bare(Bar bar, int reps) => new(bar.Mass, reps, LoadBand.Exactly(bar.Mass));

    private static IReadOnlyList<RampStep> Climb(RampKind kind, Mass work, IReadOnlyList<Mass> loads)
    {
        List<RampStep> steps = [];
        foreach (var (share, reps) in kind == RampKind.Full ? FullSteps : ShortSteps)
        {
            var fitting = loads.Where(l => l <= work * share).ToList();
            if (fitting.Count > 0 && (steps.Count == 0 || fitting[^1] > steps[^1].Load))
            {
                steps.Add(new(fitting[^1], reps, new(work * share, work * (share - Leeway), work * (share + Leeway))));
            }
        }

        return WithBands(steps, loads, work);
    }

    /// <summary>From the top down, so that each band ends below the one above it.</summary>
    private static RampStep[] WithBands(IEnumerable<RampStep> steps, IReadOnlyList<Mass> loads, Mass work)
    {
        var (under, banded) = (work, new Stack<RampStep>());
        foreach (var step in steps.Reverse())
        {
            var fit = loads.Where(l => l >= step.Band.Low && l <= step.Band.High && l < under).ToList();
            var band = fit.Count > 0 ? step.Band with { Low = fit[0], High = fit[^1] } : step.Band with { Low = step.Load, High = step.Load };
            banded.Push(step with { Band = band });
            under = band.Low;
        }

        return [.. banded];
    }
}
