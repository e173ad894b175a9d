using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>
/// The first time of an exercise: light enough that the motion is what is learned. Common practice, no source: the empty
/// bar or the lightest kit, the bottom of the range, and much help where help is given.
/// </summary>
internal static class FirstTime
{
    public static Decision Of(Slot slot, Exercise exercise, ReachableLoads? loads)
    {
        Mass? load = loads is null ? null : new LoadMoves(exercise, loads).First;
        return new(load, Reps.Each(slot.Scheme, Reps.Low(slot.Scheme)), new(Reasons.FirstTime, Line(load, exercise, slot)));
    }

    private static string Line(Mass? load, Exercise exercise, Slot slot) => (load, exercise.LoadType) switch
    {
        ({ } bar, LoadType.Barbell) => $"first time: start with the empty bar, {bar}, and learn the motion",
        ({ } help, LoadType.Assisted) => $"first time: start with much help, {help}, and learn the motion",
        ({ Amount: 0 }, LoadType.AddedWeight) => "first time: body weight alone, and learn the motion",
        ({ } lightest, _) => $"first time: start with the lightest, {lightest}, and learn the motion",
        _ when slot.Scheme is Scheme.Hold => "first time: short holds, and learn the position",
        _ => "first time: few reps, and learn the motion",
    };
}
