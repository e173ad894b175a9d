using RackSide.Training.Exercises;

namespace RackSide.Training.Loading;

/// <summary>Where a bar is taken from for an exercise.</summary>
public enum BarPlace
{
    /// <summary>The floor, or the hands.</summary>
    Floor,

    /// <summary>The rack at the height of the shoulders.</summary>
    RackHigh,

    /// <summary>The rack at the height of arms above a bench.</summary>
    RackLow,
}

/// <summary>
/// Whether a bar comes from one exercise to the next with its plates on. Common practice, no source: a loaded bar is
/// carried out of the rack to the floor or into the hands, but it is stripped before it goes up into a rack or before the
/// hooks under it are moved to another height. A bar that is told to move loaded is never stripped for it.
/// </summary>
internal static class BarPlaces
{
    /// <summary>The place of an exercise, by what it needs beside the bar.</summary>
    public static BarPlace Of(Exercise exercise) => !exercise.Equipment.Contains("rack") ? BarPlace.Floor
        : exercise.Equipment.Contains("bench") || exercise.Equipment.Contains("incline bench") ? BarPlace.RackLow
        : BarPlace.RackHigh;

    /// <summary>Whether the bar keeps its plates on the way; where a place is not known it does.</summary>
    public static bool StaysLoaded(BarStack from, BarPlace? to) =>
        from.Bar.MovesLoaded || from.Place is null || to is null or BarPlace.Floor || from.Place == to;

    /// <summary>What is on the bar when it has come to an exercise: null where it was stripped on the way.</summary>
    public static BarStack? Arriving(BarStack? from, Exercise? to) =>
        from is null || StaysLoaded(from, to is null ? null : Of(to)) ? from : null;
}
