using System.Globalization;
using NodaTime;
using RackSide.Files;
using RackSide.Logbook;
using RackSide.Places;
using RackSide.Screens;
using RackSide.Time;
using RackSide.Training.Plans;

namespace RackSide.Commands;

/// <summary>Looks at everything the program stands on, one after the other, and makes nothing.</summary>
internal sealed class Findings(Folders folders, string? planFile, Surroundings around)
{
    private const string Clock = "clock", Settings = "gym.yaml", Plan = "plan", Log = "logbook";
    private Instant? lastSession;

    /// <summary>All that was found, in the order a person would mend it.</summary>
    public IReadOnlyList<Finding> All()
    {
        var rules = File.Exists(folders.GymFile) ? GymFile.ReadFrom(folders.GymFile) : null;
        var catalogue = CatalogueFile.Read();
        var plan = planFile is null ? new Reading<Plan>(PlanFile.Default(catalogue), []) : PlanFile.ReadFrom(planFile, catalogue);
        return [Folder(), .. OfSettings(rules), .. OfPlan(plan, rules?.Value), OfLogbook(), .. new CopyFindings(folders, rules?.Value, lastSession).All(), OfClock(), OfTerminal(), FontFinding.Of(around)];
    }

    private Finding Folder() => File.Exists(folders.Data)
        ? new Finding("folder", $"{folders.Data} is a file; name a folder with --data", ExitCode.CannotCreate)
        : new Finding("folder", $"{folders.Data}{(Directory.Exists(folders.Data) ? "" : " (made when you set up)")}, decided by {folders.From}")
        {
            Look = IsOpen(folders.Data),
            Remedy = IsOpen(folders.Data) ? $"others on this machine may enter it; chmod 700 {folders.Data} keeps them out" : null,
        };

    private static bool IsOpen(string folder) => !OperatingSystem.IsWindows() && Directory.Exists(folder)
        && (File.GetUnixFileMode(folder) & (UnixFileMode.GroupRead | UnixFileMode.GroupExecute | UnixFileMode.OtherRead | UnixFileMode.OtherExecute)) != 0;

    private IEnumerable<Finding> OfSettings(Reading<HouseRules>? rules) => rules switch
    {
        null => [new Finding(Settings, $"{folders.GymFile} is not there yet; a default kit is used until you set up")],
        { Value: { } good } => [new Finding(Settings, $"{folders.GymFile}: unit {good.Kit.Unit.ToString().ToLowerInvariant()}, {(good.Rolls ? "training days roll" : Days(good.TrainingDays))}")],
        _ => rules.Mistakes.Select(m => new Finding(Settings, m.ToString(), ExitCode.Config)),
    };

    private IEnumerable<Finding> OfPlan(Reading<Plan> reading, HouseRules? rules)
    {
        if (reading.Value is not { } plan)
        {
            var code = File.Exists(planFile) ? ExitCode.Data : ExitCode.NoInput;
            return reading.Mistakes.Select(m => new Finding(Plan, m.ToString(), code));
        }

        var days = rules is null || rules.Rolls || rules.TrainingDays.Count == plan.Week.Count ? ""
            : plan.Rolls ? "; it rolls, so the weekdays of gym.yaml are not used"
            : $"; gym.yaml has {Count(rules.TrainingDays.Count, "training day")}, so the plan's own are kept: {Days(plan.Week.Keys.Order())}";
        return [new Finding(Plan, $"{planFile ?? "built in"}: \"{plan.Name}\", {Count(plan.DaysAWeek, "training day")} a week{days}")];
    }

    private Finding OfLogbook()
    {
        if (!LiteLogbook.IsIn(folders.Data))
        {
            return new Finding(Log, "none yet; it begins when you set up");
        }

        try
        {
            using var logbook = LogbookDoor.Look(folders.Data, SystemTime.Start(_ => null));
            var sessions = logbook.Lifters().SelectMany(l => logbook.Sessions(l.Key)).ToList();
            lastSession = sessions.Count == 0 ? null : sessions.Max(s => s.Head.Begun);
            var report = (logbook as LiteLogbook)?.Report;
            var told = logbook is LogbookSnapshot ? "; open in another window, so this is from its copy and journal" : report?.Sentence is { } sentence ? $". {sentence}" : "";
            return new Finding(
                Log,
                $"{Count(logbook.Lifters().Count, "lifter")}, {Count(sessions.Count, "session")}{told}",
                report is { Lost: not 0 } ? ExitCode.InputOutput : ExitCode.Ok);
        }
        catch (Refusal refusal)
        {
            return new Finding(Log, refusal.Message, refusal.Code);
        }
    }

    private Finding OfClock()
    {
        try
        {
            var now = SystemTime.Start(around.Environment).GetCurrentInstant();
            var zone = SystemTime.Zone();
            var text = $"{now.InZone(zone).ToString("uuuu-MM-dd HH:mm o<g>", CultureInfo.InvariantCulture)}, zone {zone.Id}";
            return now < lastSession
                ? new Finding(Clock, $"{text}: that is before the last session in the logbook; set the clock first", ExitCode.Config)
                : new Finding(Clock, text);
        }
        catch (Refusal refusal)
        {
            return new Finding(Clock, refusal.Message, refusal.Code);
        }
    }

    private Finding OfTerminal()
    {
        var options = ScreenOptions.From(around.Environment);
        var small = around.TerminalSize() is { } size && (size.Columns < 50 || size.Rows < 15);
        var colours = options.Colour ? "colours on" : "colours off by NO_COLOR";
        return new Finding("terminal", around.TerminalSize() is var (columns, rows)
            ? $"{(string.IsNullOrEmpty(options.Terminal) ? "TERM is not set" : options.Terminal)}, {columns}x{rows}, {colours}"
            : $"output goes elsewhere, so only plain text is printed; {(string.IsNullOrEmpty(options.Terminal) ? "TERM is not set" : $"TERM is {options.Terminal}")}, {colours}")
        {
            Look = small,
            Remedy = small ? "pages are drawn for 50x15 and more; a larger window or a smaller font helps" : null,
        };
    }

    private static string Count(int count, string thing) => $"{count} {thing}{(count == 1 ? "" : "s")}";

    private static string Days(IEnumerable<IsoDayOfWeek> days) => string.Join(", ", days.Select(d => d.ToString()));
}
