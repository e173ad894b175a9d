using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using RackSide.Training.Skills;

namespace RackSide.Training.Planning;

/// <summary>A slot, the exercise that fills it on a date, and for a ladder what its rung asks for.</summary>
/// <param name="Slot">The slot.</param>
/// <param name="Exercise">The exercise.</param>
/// <param name="Decision">A ladder's decision; null where the slot's own rule decides.</param>
internal sealed record Filling(Slot Slot, Exercise Exercise, Decision? Decision = null)
{
    /// <summary>What fills a slot; null where nothing here can.</summary>
    public static Filling? Of(Slot slot, Catalogue catalogue, GymKit kit, Lifter lifter, TrainingHistory history, LocalDate date) =>
        slot.Ladder is { } ladder
            ? Climbing.Next(slot, Fitting.Rungs(ladder, catalogue, kit, lifter, history), history, date) is { } stands
                ? new(slot, stands.Exercise, stands.Decision)
                : null
            : Planner.Fill(slot, catalogue, kit, lifter, history) is { } exercise ? new(slot, exercise) : null;
}
