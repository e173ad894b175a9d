using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using RackSide.Training.Strength;

namespace RackSide.Training.Planning;

/// <summary>A set the lifter knows from elsewhere, as a load to begin with.</summary>
public static class KnownSets
{
    /// <summary>
    /// How long a told set counts, in days: eight weeks, the longest gap after which a return is still a share of the old
    /// load. Common practice, no source.
    /// </summary>
    public const int RecentDays = 56;

    /// <summary>The most that is believed, in kilograms and in pounds; far over any beginner's set, it catches a slip of a key.</summary>
    private const int MostKilograms = 300, MostPounds = 660;

    /// <summary>
    /// The load that the newest recent set of this exercise gives, with four reps in reserve; null where none is told. To the
    /// gram, so that 52.5 does not come out as a hair less and lose a pair of plates.
    /// </summary>
    /// <param name="history">All that was told.</param>
    /// <param name="slot">The slot that asks.</param>
    /// <param name="exercise">The exercise that fills it.</param>
    /// <param name="date">The date it is for.</param>
    public static KnownStart? For(TrainingHistory history, Slot slot, Exercise exercise, LocalDate date) =>
        history.Told.OfType<SetKnown>().LastOrDefault(k => k.Exercise == exercise.Id) is { } known
        && Period.DaysBetween(known.On, date) <= RecentDays
        && WantedReps(slot.Scheme) is { } reps
        && WorkingLoad.From(known.Load, known.Reps, reps, LoadSearch.Enough) is { } load
            ? new KnownStart(load with { Amount = decimal.Round(load.Amount, NumberEntry.MostDecimals) }, known.Reps, known.Load)
            : null;

    /// <summary>Whether a set of this exercise can be begun from: its load is told, and is all of what is lifted.</summary>
    public static bool CanBeTold(Exercise exercise) =>
        exercise is { Held: false, LoadType: LoadType.Barbell or LoadType.DumbbellPair or LoadType.DumbbellSingle or LoadType.MachineStack };

    /// <summary>Why a set cannot be taken as known, as one sentence; null where it can.</summary>
    /// <param name="load">Its load.</param>
    /// <param name="reps">Its reps.</param>
    public static string? Refusal(Mass load, decimal reps) => RefusalOf(load) ?? (reps is >= 1 and <= OneRepMaximum.MostReps && decimal.Truncate(reps) == reps
        ? null
        : $"tell a set of 1 to {OneRepMaximum.MostReps} reps: more of them say little of strength");

    /// <summary>Why a load cannot be taken as known, as one sentence; null where it can.</summary>
    public static string? RefusalOf(Mass load)
    {
        var most = load.Unit == MassUnit.Kilogram ? MostKilograms : MostPounds;
        return load.Amount > 0 && load.Amount <= most ? null : $"tell a load over 0 and up to {most} {load.Symbol}, the bar counted";
    }

    private static int? WantedReps(Scheme scheme) => scheme switch
    {
        Scheme.Fixed f => f.Reps,
        Scheme.Range r => r.Low,
        _ => null,
    };
}
