using System.Diagnostics;
using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>How much heavier the next load is where the plan sets no step.</summary>
public static class StepSizes
{
    /// <summary>
    /// The default step by load type and body area. What a kit cannot step by, it steps past: the caller takes the next
    /// reachable load.
    /// </summary>
    /// <remarks>
    /// The handbook's increments for the less trained are 2.5-5 lb (1-2 kg) for the upper body and 5-10 lb (2-4 kg) for the
    /// lower (NSCA, Essentials of Strength Training and Conditioning, load increases beside the 2-for-2 rule, seen in
    /// second-hand copies). Next to them, common practice: 2.5 kg or 5 lb on a bar, the least that a common 1.25 kg or 2.5 lb
    /// pair gives, though 2.5 kg is a little over the 2 kg for the upper body; half of it for lifts that use less muscle, the
    /// overhead press and single-joint arm work; 1.25 kg or 2.5 lb hung from the body; 5 kg or 10 lb less help. Dumbbells and stacks move to their next position, so their step is the smallest mass
    /// that can be told, and any next position lies at or beyond it.
    /// </remarks>
    /// <param name="exercise">The exercise.</param>
    /// <param name="unit">The unit the load is told in.</param>
    /// <returns>More than zero; zero only for an exercise without a told load. For an assisted exercise it is help taken away.</returns>
    public static Mass For(Exercise exercise, MassUnit unit) => exercise.LoadType switch
    {
        LoadType.Barbell when UsesLessMuscle(exercise.Motion) => Of(1.25m, 2.5m, unit),
        LoadType.Barbell => Of(2.5m, 5, unit),
        LoadType.DumbbellPair or LoadType.DumbbellSingle or LoadType.MachineStack => Of(0.001m, 0.001m, unit),
        LoadType.AddedWeight => Of(1.25m, 2.5m, unit),
        LoadType.Assisted => Of(5, 10, unit),
        LoadType.Bodyweight or LoadType.Band => Mass.Zero(unit),
        _ => throw new UnreachableException(),
    };

    private static bool UsesLessMuscle(Motion motion) =>
        motion is Motion.VerticalPush or Motion.ElbowFlexion or Motion.ElbowExtension;

    private static Mass Of(decimal kilograms, decimal pounds, MassUnit unit) =>
        new(unit == MassUnit.Kilogram ? kilograms : pounds, unit);
}
