using NodaTime;
using NodaTime.Calendars;

namespace RackSide.Training.Schedule;

/// <summary>
/// A week as ISO 8601 counts it: Monday to Sunday, week 1 holds the year's first Thursday. Its year is not always the
/// calendar year: 1 Jan 2027 belongs to week 53 of 2026.
/// </summary>
/// <param name="Year">The ISO week year.</param>
/// <param name="Number">1 to 53.</param>
public sealed record IsoWeek(int Year, int Number)
{
    /// <summary>The week a date falls in.</summary>
    public static IsoWeek Of(LocalDate date) =>
        new(WeekYearRules.Iso.GetWeekYear(date), WeekYearRules.Iso.GetWeekOfWeekYear(date));

    /// <summary>Its Monday.</summary>
    public LocalDate Monday => WeekYearRules.Iso.GetLocalDate(Year, Number, IsoDayOfWeek.Monday);

    /// <summary>Its Sunday.</summary>
    public LocalDate Sunday => Monday.PlusDays(6);

    /// <summary>The week before.</summary>
    public IsoWeek Before => Of(Monday.PlusDays(-7));

    /// <summary>Whether a date falls in it.</summary>
    public bool Holds(LocalDate date) => Of(date) == this;
}
