using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Training.Skills;

/// <summary>A ladder's slot as if its rung had been written into it: the rung's exercise, its sets and its targets.</summary>
internal static class RungSlots
{
    /// <summary>
    /// The slot of a rung. A slot by time or by a total keeps its own numbers; every other takes the rung's, and the rule of
    /// progress that goes with them. An exercise that is no rung of the slot's ladder, or a slot without one, leaves the slot
    /// as it is.
    /// </summary>
    public static Slot Of(Slot slot, Exercise exercise) => slot.Ladder?.RungOf(exercise.Id) is not { } rung ? slot
        : HasOwnNumbers(slot) ? slot with { Motion = exercise.Motion }
        : slot with
        {
            Motion = exercise.Motion,
            Scheme = SchemeOf(rung, exercise),
            Progress = slot.Progress with { Kind = exercise.Held ? ProgressKind.LongerHold : ProgressKind.WorkUpRange },
        };

    /// <summary>Whether a slot counts by time or by a total, whatever rung fills it.</summary>
    public static bool HasOwnNumbers(Slot slot) => slot.Scheme is Scheme.Accumulate or Scheme.Total;

    private static Scheme SchemeOf(Rung rung, Exercise exercise) => exercise.Held
        ? new Scheme.Hold(rung.Sets, rung.Low, rung.High)
        : new Scheme.Range(rung.Sets, rung.Low, rung.High);
}
