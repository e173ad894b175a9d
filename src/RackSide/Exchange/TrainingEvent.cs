using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Exchange;

/// <summary>One training day as a calendar keeps it.</summary>
/// <param name="Kind">Strength or skills.</param>
/// <param name="Number">
/// The how-manieth of its kind for this lifter, from 1: that, and not the date, is what it is. A day that moves keeps its
/// number, so that a calendar moves it too.
/// </param>
/// <param name="Date">When it is.</param>
/// <param name="Name">The training day's name.</param>
/// <param name="Why">Why it is then.</param>
internal sealed record TrainingEvent(DayKind Kind, int Number, LocalDate Date, string Name, string Why)
{
    /// <summary>Whether it is off until further notice: a calendar that has it takes it out.</summary>
    public bool Off { get; init; }
}
