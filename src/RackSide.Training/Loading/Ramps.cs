using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Loading;

/// <summary>The warm-up sets that lead to the first working set.</summary>
public static class Ramps
{
    /// <summary>
    /// The ramp of an exercise: the steps of the rule (<see cref="RampSteps"/>). On a bar their loads are chosen within
    /// their bands so that the fewest plates are handled from what is on the bar now to the bare bar after the working
    /// sets. The working load is never moved to save plates.
    /// </summary>
    /// <param name="kind">Which ramp the slot asks for.</param>
    /// <param name="work">The working load.</param>
    /// <param name="exercise">What it is for.</param>
    /// <param name="loads">The loads that can be had for it.</param>
    /// <param name="kit">The gym, for its bars and plates.</param>
    /// <param name="onBar">The loaded bar that the exercise before it left; null for a bare bar.</param>
    /// <returns>The sets, lightest first; empty where there is nothing to ramp.</returns>
    public static IReadOnlyList<RampSet> For(
        RampKind kind, Mass work, Exercise exercise, ReachableLoads loads, GymKit kit, BarStack? onBar = null) =>
        For(kind, work, exercise, loads, new KitLoads(kit), onBar);

    /// <summary>The same with what the kit can load at hand.</summary>
    internal static IReadOnlyList<RampSet> For(
        RampKind kind, Mass work, Exercise exercise, ReachableLoads loads, KitLoads kit, BarStack? onBar)
    {
        var table = kit.TableFor(exercise);
        var steps = RampSteps.For(kind, work, exercise, loads, table);
        return exercise.LoadType == LoadType.Barbell && steps.Count > 0 && table.BarFor(work) is { } bar
            ? Chosen(steps, FewestPlates.For(PlateJob.On(bar, kit.Kit, [.. steps.Select(s => s.Band), LoadBand.Exactly(work)], onBar)), bar, loads)
            : [.. steps.Select(s => new RampSet(s.Load, s.Reps))];
    }

    /// <summary>The loads of the plan's stacks; those of the rule where the working load itself cannot be made.</summary>
    private static RampSet[] Chosen(IReadOnlyList<RampStep> steps, PlatePlan? plan, Bar bar, ReachableLoads loads) =>
        [.. steps.Select((s, i) => new RampSet(plan is null ? s.Load : loads.Nearest(new BarStack(bar, plan.Stacks[i]).Total), s.Reps))];
}
