using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.Schedule;

/// <summary>A date of the calendar, if every day before it goes as said.</summary>
/// <param name="Date">The date.</param>
/// <param name="Kind">Train, rest, away, or done already.</param>
/// <param name="Day">The training day due or done; null without one.</param>
/// <param name="Why">One sentence that says why.</param>
public sealed record DayAhead(LocalDate Date, DueKind Kind, TrainingDay? Day, string Why);
