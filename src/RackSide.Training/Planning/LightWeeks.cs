using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using RackSide.Training.Schedule;

namespace RackSide.Training.Planning;

/// <summary>
/// Which week is a light one: where two main lifts or more stall on the same strength day, that day begins a week of half
/// the sets. Common practice, no source: several lifts that stall together tell of tiredness rather than of one lift. Seven
/// days later the loads come back: each stalled lift at its own lighter load, every other where it was.
/// </summary>
public static class LightWeeks
{
    private const int StalledTogether = 2, Days = 7;

    /// <summary>
    /// Why a strength day is one of a light week, in the words of its why-lines; null where it is an ordinary one. Skills
    /// days are light enough as they are.
    /// </summary>
    /// <param name="day">The training day.</param>
    /// <param name="ordinary">What it would ask for otherwise.</param>
    /// <param name="history">All the lifter's sessions.</param>
    /// <param name="date">Its date.</param>
    public static string? Why(TrainingDay day, IReadOnlyList<Prescription> ordinary, TrainingHistory history, LocalDate date)
    {
        if (day.Kind != DayKind.Strength)
        {
            return null;
        }

        var light = Dates(history).Where(d => d <= date).ToList();
        return Began(light, date) is { } began ? $"since {began.Short()}"
            : ordinary.Count(p => Stalls(p, history, light)) is var stalled and >= StalledTogether ? $"{stalled} main lifts stalled"
            : null;
    }

    /// <summary>The dates of the sessions that were light, oldest first.</summary>
    private static IEnumerable<LocalDate> Dates(TrainingHistory history) =>
        history.Sessions.Where(s => s.Head.Prescriptions.Any(LightWeek.Is) && s.Trained).Select(s => s.Date).Order();

    private static LocalDate? Began(List<LocalDate> light, LocalDate date) =>
        light.Count > 0 && light.First(d => Period.DaysBetween(d, light[^1]) < Days) is var first && Period.DaysBetween(first, date) < Days
            ? first
            : null;

    /// <summary>
    /// A main lift that gets lighter after its misses, and whose misses no light week has answered yet. One that is at the
    /// lightest load already is too hard an exercise rather than a tired one.
    /// </summary>
    private static bool Stalls(Prescription asked, TrainingHistory history, List<LocalDate> light) =>
        asked.Why.Code == Reasons.ThirdMiss && MainLifts.Is(asked) && Amount(asked, "from") != Amount(asked, "to")
        && history.Of(asked.Exercise).LastOrDefault(p => !LightWeek.Is(p.Asked)) is { } missed
        && light.All(d => d < missed.Date);

    private static decimal? Amount(Prescription asked, string name) => asked.Why.Inputs.FirstOrDefault(i => i.Name == name)?.Amount;
}
