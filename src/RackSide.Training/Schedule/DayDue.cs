using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.Schedule;

/// <summary>What the calendar asks for on a date.</summary>
public enum DueKind
{
    /// <summary>A training day is due.</summary>
    Train,

    /// <summary>Nothing is due; rest is part of the plan.</summary>
    Rest,

    /// <summary>Today's training is done already.</summary>
    DoneToday,

    /// <summary>Nothing is due, and nothing is missed: the lifter is away.</summary>
    Away,
}

/// <summary>The answer of the calendar for one date.</summary>
/// <param name="Kind">Train, rest, away, or done already.</param>
/// <param name="Day">The training day where one is due; otherwise null.</param>
/// <param name="Why">One sentence that says why.</param>
/// <param name="Next">
/// The first training date after today, if all goes as said; for a lifter away for nobody knows how long, the first if
/// the days away end today.
/// </param>
/// <param name="NextDay">The training day of <paramref name="Next"/>.</param>
public sealed record DayDue(DueKind Kind, TrainingDay? Day, string Why, LocalDate Next, TrainingDay NextDay);
