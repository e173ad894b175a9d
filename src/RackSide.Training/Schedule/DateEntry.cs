using System.Text.RegularExpressions;
using NodaTime;

namespace RackSide.Training.Schedule;

/// <summary>
/// A date as people type it, on a numeric pad too: <c>2026-12-20</c> or <c>20261220</c>; <c>20.12</c> or
/// <c>20.12.2026</c>, day first; <c>today</c>, <c>tomorrow</c>, <c>yesterday</c>. Without a year the date nearest to
/// today is meant.
/// </summary>
public static partial class DateEntry
{
    /// <summary>The most characters of a date that is typed.</summary>
    public const int Room = 10;

    /// <summary>How to write one, for the end of a sentence.</summary>
    public const string Right = "write one such as 2026-12-20 or 20.12 (day.month)";

    /// <summary>The date of a text; null where it is none.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="today">The date that words and dates without a year go by.</param>
    public static LocalDate? Read(string text, LocalDate today) => text.Trim().ToLowerInvariant() switch
    {
        "today" => today,
        "tomorrow" => today.PlusDays(1),
        "yesterday" => today.PlusDays(-1),
        var plain => Written().Match(plain) is { Success: true } match ? Of(match, today) : null,
    };

    /// <summary>What is wrong with a text that is no date: a sentence that says what to write.</summary>
    public static string Refusal(string text) => text.Trim().Length == 0
        ? $"Nothing is typed yet; {Right}."
        : $"\"{text.Trim()}\" is {(Written().IsMatch(text.Trim()) ? "not a day of the calendar" : "not a date")}; {Right}.";

    private static LocalDate? Of(Match match, LocalDate today)
    {
        var (day, month) = (Number(match, "day"), Number(match, "month"));
        return match.Groups["year"].Success ? At(Number(match, "year"), month, day)
            : new[] { today.Year - 1, today.Year, today.Year + 1 }
                .Select(year => At(year, month, day))
                .OfType<LocalDate>()
                .OrderBy(date => Math.Abs(Period.DaysBetween(today, date)))
                .Cast<LocalDate?>()
                .FirstOrDefault();
    }

    private static LocalDate? At(int year, int month, int day) =>
        year is >= 1970 and <= 2199 && month is >= 1 and <= 12 && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month)
            ? new LocalDate(year, month, day)
            : null;

    private static int Number(Match match, string part) =>
        int.Parse(match.Groups[part].ValueSpan, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?:(?<year>\d{4})-?(?<month>\d{2})-?(?<day>\d{2})|(?<day>\d{1,2})[.,](?<month>\d{1,2})(?:[.,](?<year>\d{4})?)?)$")]
    private static partial Regex Written();
}
