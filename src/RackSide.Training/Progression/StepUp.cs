using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>
/// One step harder, from the bottom of the range. The step is the plan's, and the load the easiest that the kit can give
/// at or beyond it. A step over ten per cent is named, because the handbook's range is 2 to 10 (ACSM 2009).
/// </summary>
internal static class StepUp
{
    public static Decision Next(Footing f, string code, string done)
    {
        var targets = Reps.Each(f.Slot.Scheme, Reps.Low(f.Slot.Scheme));
        return f.Load is not { } load ? NoLoad(f, done)
            : f.Moves!.Harder(load, f.Step) is { } harder
                ? new(harder, targets, new(code, $"{done} on {f.On}: {LoadText.Harder(load, harder, f.Exercise)}"))
                : Spent(f, load, done);
    }

    private static Decision NoLoad(Footing f, string done) => new(
        null,
        Stay(f),
        new(Reasons.KitIsSpent, $"{done} on {f.On}: ready for a harder exercise"));

    private static Decision Spent(Footing f, Mass load, string done) => new(
        load,
        Stay(f),
        new(Reasons.KitIsSpent, f.Exercise.LoadType == Exercises.LoadType.Assisted
            ? $"{done} on {f.On}: no help left to take off, so a harder exercise"
            : $"{done} on {f.On}: {load} is the most this kit can load"));

    private static IReadOnlyList<int> Stay(Footing f) =>
        Reps.Each(f.Slot.Scheme, f.Slot.Scheme is Scheme.Range r ? r.High : f.Asked);
}
