using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime.Calendars;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary>A week as ISO 8601-1 writes it: year, W, two digits.</summary>
internal static partial class WeekEntry
{
    /// <summary>The week of a text such as <c>2026-W48</c>.</summary>
    /// <exception cref="Refusal">It is none.</exception>
    public static IsoWeek Parse(string text)
    {
        if (Written().Match(text.Trim()) is not { Success: true } match)
        {
            throw new Refusal(ExitCode.Usage, $"--week: \"{text}\" is not a week; write one such as 2026-W48");
        }

        var (year, number) = (Number(match, "year"), Number(match, "week"));
        var last = WeekYearRules.Iso.GetWeeksInWeekYear(year);
        return number >= 1 && number <= last
            ? new IsoWeek(year, number)
            : throw new Refusal(ExitCode.Usage, $"--week: {year} has no week {number}; its weeks are 1 to {last}");
    }

    /// <summary>A week as it is written.</summary>
    public static string Text(IsoWeek week) => string.Create(CultureInfo.InvariantCulture, $"{week.Year:0000}-W{week.Number:00}");

    private static int Number(Match match, string part) => int.Parse(match.Groups[part].ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex("^(?<year>[12][0-9]{3})-?[Ww](?<week>[0-9]{1,2})$")]
    private static partial Regex Written();
}
