using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Forecasting;

/// <summary>A training day that an invented lifter did.</summary>
/// <param name="Date">When.</param>
/// <param name="Day">The training day.</param>
/// <param name="Estimate">How long the plan of the day takes.</param>
/// <param name="Slots">What was asked and what became of it, in order.</param>
public sealed record TrialSession(LocalDate Date, TrainingDay Day, Duration Estimate, IReadOnlyList<TrialSlot> Slots);

/// <summary>A slot of such a day.</summary>
/// <param name="Asked">What was asked for.</param>
/// <param name="Load">The load used: the one asked for, or the one that the first search found; null where none is told.</param>
/// <param name="Done">Reps or seconds of each set; for a total or seconds in all the whole of it.</param>
public sealed record TrialSlot(Prescription Asked, Mass? Load, IReadOnlyList<int> Done);
