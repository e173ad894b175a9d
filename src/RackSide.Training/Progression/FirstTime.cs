using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>A load to begin with that rests on a set the lifter knows.</summary>
/// <param name="Load">What such a set leaves room for, before it is rounded to what can be loaded.</param>
/// <param name="Reps">The reps of the known set.</param>
/// <param name="Known">Its load.</param>
public sealed record KnownStart(Mass Load, int Reps, Mass Known);

/// <summary>
/// The first time of an exercise: light enough that the motion is what is learned. Common practice, no source: the empty
/// bar or the lightest kit, the bottom of the range, and much help where help is given; from there the session searches
/// (<see cref="LoadSearch"/>). A set the lifter knows takes the search's place.
/// </summary>
internal static class FirstTime
{
    public static Decision Of(Slot slot, Exercise exercise, ReachableLoads? loads, KnownStart? known = null)
    {
        var targets = Reps.Each(slot.Scheme, Reps.Low(slot.Scheme));
        if (loads is not null && known is not null && SearchSpans.For(slot.Scheme, exercise, loads) is { IsHelp: false })
        {
            return FromKnown(targets, loads, known);
        }

        Mass? load = loads is null ? null : new LoadMoves(exercise, loads).First;
        return new(load, targets, new(Reasons.FirstTime, Line(load, exercise, slot)))
        {
            Search = loads is null ? null : SearchSpans.For(slot.Scheme, exercise, loads),
        };
    }

    /// <summary>Rounded down, and never above the known load itself.</summary>
    private static Decision FromKnown(IReadOnlyList<int> targets, ReachableLoads loads, KnownStart known)
    {
        var load = loads.AtOrBelow(known.Load < known.Known ? known.Load : known.Known);
        return new(load, targets, new(Reasons.KnownSet, $"first time: you know {known.Known} x {known.Reps}, so {load}, with reps to spare")
        {
            Inputs = [new("known", known.Known.Amount, known.Known.Symbol), new("knownReps", known.Reps)],
        });
    }

    private static string Line(Mass? load, Exercise exercise, Slot slot) => (load, exercise.LoadType) switch
    {
        ({ } bar, LoadType.Barbell) => $"first time: start with the empty bar, {bar}, and learn the motion",
        ({ } help, LoadType.Assisted) => $"first time: start with much help, {help}, and learn the motion",
        ({ Amount: 0 }, LoadType.AddedWeight) => "first time: body weight alone, and learn the motion",
        ({ } lightest, _) => $"first time: start with the lightest, {lightest}, and learn the motion",
        _ when slot.Scheme is Scheme.Hold => "first time: short holds, and learn the position",
        _ when slot.Scheme is Scheme.Accumulate => "first time: easy goes, and learn the motion",
        _ => "first time: few reps, and learn the motion",
    };
}
