using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;

namespace RackSide.Training.Planning;

/// <summary>
/// How a day's prescriptions go on the bar one after the other. Between two exercises the bar is left as it is, and the
/// next one counts with what is on it: whether a bar in the rack is carried elsewhere is not known, and a plate that is
/// wanted again is never told to come off.
/// </summary>
internal static class BarOrder
{
    /// <summary>The loaded bars of a prescription's sets, the ramp first and the working load once; empty where it needs none.</summary>
    /// <param name="asked">The prescription.</param>
    /// <param name="exercise">Its exercise.</param>
    /// <param name="loads">What the kit can load.</param>
    /// <param name="onBar">What is on the bar before it.</param>
    public static IReadOnlyList<BarStack> Of(Prescription asked, Exercise? exercise, KitLoads loads, BarStack? onBar) =>
        exercise?.LoadType == LoadType.Barbell && asked.Load is { } work
            ? loads.Row([.. asked.Ramp.Select(r => new BarSet(r.Load, exercise)), new(work, exercise)], onBar)
            : [];
}
