using System.CommandLine;
using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;
using RackSide.Reports;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;

namespace RackSide.Commands;

/// <summary><c>rackside report</c>: a week, a month or a blank sheet as one page for a browser or a printer.</summary>
internal sealed class ReportCommand : Command
{
    private static readonly YearMonthPattern Month = YearMonthPattern.CreateWithInvariantCulture("uuuu'-'MM");

    private readonly RackSideCommand root;
    private readonly Surroundings around;
    private readonly Option<string?> file = new("--out") { Description = "Write the page into this file.", HelpName = "FILE" };
    private readonly Option<string?> week = new("--week") { Description = "An ISO week, Monday to Sunday; this week if not said.", HelpName = "2026-W48" };
    private readonly Option<string?> month = new("--month") { Description = "The weeks of a month instead.", HelpName = "2026-11" };
    private readonly Option<bool> paper = new("--paper") { Description = "The next training day for pen and paper, in case the power is out." };

    /// <summary>The command.</summary>
    public ReportCommand(RackSideCommand root, Surroundings around)
        : base("report", "One page of A4 for a coach or the wall: a week, a month, or a training day for pen and paper.")
    {
        (this.root, this.around) = (root, around);
        Options.Add(file);
        Options.Add(week);
        Options.Add(month);
        Options.Add(paper);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        var path = parsed.GetValue(file) ?? throw new Refusal(ExitCode.Usage, "report needs a file to write; add --out week.html");
        var asked = parsed.GetValue(week) is { } text ? WeekEntry.Parse(text) : (IsoWeek?)null;
        var asMonth = parsed.GetValue(month) is { } typed ? Parse(typed) : (YearMonth?)null;
        if (new[] { asked is not null, asMonth is not null, parsed.GetValue(paper) }.Count(a => a) > 1)
        {
            throw new Refusal(ExitCode.Usage, "--week, --month and --paper are three different pages; ask for one of them");
        }

        using var gym = root.Open(parsed, begin: false, looks: true);
        around.Error.Print(gym.Report is { } report ? PlainText.Wrap($"rackside: {report}") : []);
        var lifter = gym.Joined(parsed.GetValue(root.Who));
        Write(path, parsed.GetValue(paper) ? Paper(gym, lifter) : asMonth is { } m ? OfMonth(gym, lifter, m) : OfWeek(gym, lifter, asked ?? IsoWeek.Of(gym.Today)));
        around.Error.Print(PlainText.Wrap($"rackside: {path}: written; any browser shows and prints it"));
        return ExitCode.Ok;
    }

    private static string Paper(Gym gym, Lifter lifter)
    {
        var history = gym.Recent(lifter);
        var today = Planner.For(gym.Plan, gym.Catalogue, gym.Kit, lifter, history, gym.Today);
        var date = today.Day is null ? today.Due.Next : gym.Today;
        var plan = today.Day is null ? Planner.For(gym.Plan, gym.Catalogue, gym.Kit, lifter, history, date, today.Due.NextDay) : today;
        return PaperSheet.Of(lifter, plan, date, gym.Catalogue, gym.Kit);
    }

    private static string OfWeek(Gym gym, Lifter lifter, IsoWeek asked)
    {
        var past = PastWeek.Of(gym, lifter, asked);
        return WeekReport.Of(lifter, past.Summary, gym.Catalogue, past.History, past.WeighIns);
    }

    private static string OfMonth(Gym gym, Lifter lifter, YearMonth asked)
    {
        var weeks = MonthReport.WeeksOf(asked).Where(w => w.Monday <= gym.Today).Select(w => PastWeek.Of(gym, lifter, w).Summary).ToList();
        return weeks.Count > 0
            ? MonthReport.Of(lifter, asked, weeks)
            : throw new Refusal(ExitCode.Usage, $"--month: {Month.Format(asked)} has not begun yet");
    }

    private static YearMonth Parse(string text) => Month.Parse(text.Trim()) is { Success: true } read
        ? read.Value
        : throw new Refusal(ExitCode.Usage, $"--month: \"{text}\" is not a month; write one such as 2026-11");

    private static void Write(string path, string page)
    {
        try
        {
            File.WriteAllText(path, page, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new Refusal(ExitCode.CannotCreate, $"--out: {path} cannot be written: {trouble.Message}");
        }
    }
}
