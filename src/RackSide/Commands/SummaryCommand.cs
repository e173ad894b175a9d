using System.CommandLine;
using RackSide.Json;
using RackSide.Training.History;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;

namespace RackSide.Commands;

/// <summary><c>rackside summary</c>: a week in a few lines.</summary>
internal sealed class SummaryCommand : PrintingCommand
{
    private readonly Option<string?> week = new("--week")
    {
        Description = "An ISO week, Monday to Sunday; this week if not said.",
        HelpName = "2026-W48",
    };

    /// <summary>The command.</summary>
    public SummaryCommand(RackSideCommand root, Surroundings around)
        : base("summary", "A week: what was done, where each lift stands, what comes next.", root, around) => Options.Add(week);

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        var asked = parsed.GetValue(week) is { } text ? WeekEntry.Parse(text) : (IsoWeek?)null;
        using var gym = Open(parsed);
        var lifter = Who(gym, parsed);
        TellNewcomer(lifter);
        if (asked is { } other && other != IsoWeek.Of(gym.Today))
        {
            return Outside(other, gym, gym.Logbook.Cards(lifter.Key)) is { } note
                ? Print(parsed, [note], () => NoWeekJson.Of(lifter, other, note), JsonOutput.Shapes.NoWeekJson)
                : Print(parsed, lifter, gym.WeekUntil(lifter, other.Sunday));
        }

        return Print(parsed, lifter, gym.Week(lifter, null, gym.Today));
    }

    private int Print(ParseResult parsed, Lifter lifter, WeekSummary summary) =>
        Print(parsed, summary.Lines, () => SummaryJson.Of(lifter, summary), JsonOutput.Shapes.SummaryJson);

    private static string? Outside(IsoWeek week, Gym gym, IReadOnlyList<SessionCard> sessions) =>
        week.Monday > gym.Today ? $"{WeekEntry.Text(week)} has not begun yet: it begins on {week.Monday.Short()} {week.Monday.Year}."
        : sessions.Count == 0 ? "No session is in the logbook yet."
        : sessions.Min(s => s.Date) is var first && week.Sunday < first
            ? $"{WeekEntry.Text(week)} is before the first session, on {first.Short()} {first.Year}."
        : null;
}
