using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.Schedule;

/// <summary>The plan's weekdays laid over the calendar.</summary>
internal static class WeekPattern
{
    /// <summary>The training day that the pattern has on a date, or null on a free day.</summary>
    public static TrainingDay? On(Plan plan, LocalDate date) =>
        plan.Week.TryGetValue(date.DayOfWeek, out var key) ? plan.Day(key) : null;

    /// <summary>The newest date of the pattern before a date, or null where it has none.</summary>
    public static LocalDate? Before(Plan plan, LocalDate date) => Back(date).FirstOrDefault(d => On(plan, d!.Value) is not null);

    /// <summary>The newest strength date of the pattern before a date, or null where the plan has no strength day.</summary>
    public static LocalDate? StrengthBefore(Plan plan, LocalDate date) =>
        Back(date).FirstOrDefault(d => On(plan, d!.Value)?.Kind == DayKind.Strength);

    /// <summary>The strength day that comes first from a date on; in a plan without one, whatever comes first.</summary>
    public static TrainingDay FirstStrength(Plan plan, LocalDate from)
    {
        var week = Enumerable.Range(0, 7).Select(i => On(plan, from.PlusDays(i))).OfType<TrainingDay>().ToList();
        return week.Find(d => d.Kind == DayKind.Strength) ?? week[0];
    }

    private static IEnumerable<LocalDate?> Back(LocalDate date) => Enumerable.Range(1, 7).Select(back => (LocalDate?)date.PlusDays(-back));
}
