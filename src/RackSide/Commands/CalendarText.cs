using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary>The next weeks in plain lines.</summary>
internal static class CalendarText
{
    /// <summary>The lines, each of at most 80 columns.</summary>
    public static IEnumerable<string> Lines(TrainingCalendar calendar, Lifter lifter, IsoDayOfWeek weekStarts) =>
    [
        $"from {calendar.Today.Shown()}{(lifter.Name.Length > 0 ? $", for {lifter.Name}" : "")}",
        .. calendar.Weeks.SelectMany(week => Week(calendar, week, weekStarts)),
    ];

    private static IEnumerable<string> Week(TrainingCalendar calendar, IReadOnlyList<DayAhead> week, IsoDayOfWeek weekStarts)
    {
        var days = week.Where(d => d.Kind is not DueKind.Rest || d.Date == calendar.Today).ToList();
        return
        [
            "",
            WeekName(week, weekStarts),
            .. days.Where((d, i) => d.Kind != DueKind.Away || i == 0 || days[i - 1].Kind != DueKind.Away || d.Date == calendar.Today)
                .SelectMany(d => PlainText.Wrap($"{Day(d)}{(d.Date == calendar.Today ? " (today)" : "")}", margin: 2)),
        ];
    }

    // A number that ISO 8601 gives to weeks from Monday to Sunday is given to no other.
    private static string WeekName(IReadOnlyList<DayAhead> week, IsoDayOfWeek weekStarts)
    {
        var dates = $"{week[0].Date.Short()[4..]} to {week[^1].Date.Short()[4..]}";
        return weekStarts == IsoDayOfWeek.Monday ? $"week {IsoWeek.Of(week[0].Date).Number}, {dates}" : dates;
    }

    private static string Day(DayAhead day) => day.Kind switch
    {
        DueKind.Train => $"{day.Date.Short()}: {day.Day!.Name}{(InTurn(day) ? "" : $"; {day.Why}")}",
        DueKind.DoneToday => $"{day.Date.Short()}: {day.Day?.Name ?? "training"}, done",
        DueKind.Away => $"{day.Date.Short()}: {day.Why}",
        _ => $"{day.Date.Short()}: rest, {day.Why}",
    };

    private static bool InTurn(DayAhead day) => day.Why.StartsWith($"{day.Date.Weekday()} is a ", StringComparison.Ordinal)
        || day.Why.EndsWith("next in the round", StringComparison.Ordinal);
}
