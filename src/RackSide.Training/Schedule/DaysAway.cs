using NodaTime;

namespace RackSide.Training.Schedule;

/// <summary>Days on which nobody trains and nothing is missed.</summary>
/// <param name="From">The first.</param>
/// <param name="Until">The last; null while nobody knows.</param>
public sealed record DaysAway(LocalDate From, LocalDate? Until)
{
    /// <summary>Whether a date is one of them.</summary>
    public bool Holds(LocalDate date) => date >= From && (Until is not { } last || date <= last);
}
