using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Tests.Schedule;

/// <summary>One row of Reference/what-is-due.md.</summary>
internal sealed record DueRow(string Plan, string Happened, string Today, string Due, string Next, string Why)
{
    private const string Asks = " asks for ";

    /// <summary>All rows of the file.</summary>
    public static IReadOnlyList<DueRow> All { get; } =
    [
        .. from line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Schedule", "Reference", "what-is-due.md"))
           where line.StartsWith("| ", StringComparison.Ordinal) && !line.StartsWith("| plan ", StringComparison.Ordinal)
           let cells = line.Trim('|', ' ').Split(" | ")
           select new DueRow(cells[0], cells[1], cells[2], cells[3], cells[4], cells[5]),
    ];

    /// <summary>The same row with what the rule answers.</summary>
    public DueRow Answered()
    {
        var (plan, done, away) = (PlanOf(Plan), Weeks.Done(Happened), Weeks.Away(Happened));
        var words = Today.Split(Asks);
        var today = Weeks.Date(words[0]);
        var answer = words.Length > 1
            ? DueRule.AskedFor(plan, done, today, plan.Day(words[1]), away)
            : DueRule.For(plan, done, today, away);
        return this with
        {
            Due = answer.Day?.Key ?? answer.Kind switch { DueKind.Rest => "rest", DueKind.Away => "away", _ => "done" },
            Next = $"{answer.Next.DayOfWeek.ToString()[..3]} {answer.Next.Day + (answer.Next.Month == 12 ? 30 : 0)} {answer.NextDay.Key}",
            Why = answer.Why,
        };
    }

    private static Plan PlanOf(string name) => name switch
    {
        "MWF" => Weeks.Usual,
        "rolling" => Weeks.Usual.AsRolling(),
        _ => Weeks.Usual.On([.. name.Split(' ').Select(Weeks.Weekday)]),
    };
}
