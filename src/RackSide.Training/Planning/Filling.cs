using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
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
    public static Filling? Of(Slot slot, Catalogue catalogue, KitLoads gym, Lifter lifter, TrainingHistory history, LocalDate date) =>
        slot.Ladder is { } ladder
            ? Climbing.Next(slot, Fitting.Rungs(ladder, catalogue, gym, lifter, history), history, date) is { } stands
                ? new(slot, stands.Exercise, stands.Decision)
                : null
            : Fitting.For(slot, catalogue, gym, lifter, history).FirstOrDefault() is { } exercise ? new(slot, exercise) : null;

    /// <summary>
    /// The same slot with a variant drawn for it, counted alike: on a ladder one of the rungs up to the one it stands on, else
    /// another exercise of the slot's motion that needs no load. What is drawn asks for what a first time of it would, or for
    /// what it stood at, and moves no ladder.
    /// </summary>
    public Filling Played(int seed, Catalogue catalogue, KitLoads gym, Lifter lifter, TrainingHistory history, LocalDate date)
    {
        var drawn = Play.Shuffled(Variants(catalogue, gym, lifter, history), seed, Slot.Key).FirstOrDefault() ?? Exercise;
        if (drawn.Id == Exercise.Id)
        {
            return this;
        }

        var usual = Slot.Ladder is null
            ? Progress.Next(Slot, drawn, Past.Of(history, drawn, Slot), null, date, Meanwhile.Of(history, drawn.Motion, date))
            : Climbing.AsOn(Slot, drawn, history, date);
        return new(Slot, drawn, usual with { Why = new Reason(SkillReasons.Play, Slot.Ladder is null ? "drawn by play, for variety" : "drawn by play, for variety; the ladder stays where it is") });
    }

    private IEnumerable<Exercise> Variants(Catalogue catalogue, KitLoads gym, Lifter lifter, TrainingHistory history) => Slot.Ladder is { } ladder
        ? Fitting.Rungs(ladder, catalogue, gym, lifter, history)
            .Where(e => !e.Inverted && e.Held == Exercise.Held && ladder.Number(ladder.RungOf(e.Id)!) <= ladder.Number(ladder.RungOf(Exercise.Id)!))
        : Fitting.For(Slot, catalogue, gym, lifter, history).Where(e => !e.Inverted && !e.IsLoaded && e.Held == Exercise.Held && !e.OneSided);
}
