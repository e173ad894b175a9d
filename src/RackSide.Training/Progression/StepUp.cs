using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>
/// One step harder, from the bottom of the range. The step is the plan's, or else the usual one, and the load the easiest
/// that the kit can give at or beyond it. Where the usual step is over ten per cent, a smaller one that the kit can give is
/// taken; where there is none, extra reps come first and then the step is named, because the handbook's range is 2 to 10
/// per cent (ACSM 2009).
/// </summary>
internal static class StepUp
{
    public static Decision Next(Footing f, string code, string done) =>
        f.Load is not { } load ? NoLoad(f, done)
        : Load(f, load) is not { } harder ? Spent(f, load, done)
        : RepsFirst.Next(f, load, harder, done) ?? Step(f, load, harder, code, done);

    /// <summary>The load a step leads to; null where the kit has none.</summary>
    public static Mass? Load(Footing f, Mass load) => f.Moves!.Harder(load, f.Step) is not { } harder ? null
        : f.Slot.Progress.Step is null && Ceiling.IsOver(load, harder, f.Exercise)
            ? f.Moves.HeavierWithin(load, Ceiling.Percent) ?? harder
            : harder;

    private static Decision Step(Footing f, Mass load, Mass harder, string code, string done) => new(
        harder,
        Reps.Each(f.Slot.Scheme, Reps.Low(f.Slot.Scheme)),
        new(code, $"{done} on {f.On}: {LoadText.Harder(load, harder, f.Exercise)}")
        {
            Inputs = Ceiling.Rise(load, harder, f.Exercise) is { } rise ? [new("stepPercent", rise, "%")] : [],
        });

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
