using System.CommandLine;
using System.CommandLine.Help;
using NodaTime;
using RackSide.Demo;
using RackSide.Files;
using RackSide.Places;
using RackSide.Time;

namespace RackSide.Commands;

/// <summary>The program's command line as a whole.</summary>
internal sealed class RackSideCommand : RootCommand
{
    /// <summary>The name of <see cref="Verbose"/>.</summary>
    public const string VerboseName = "--verbose";

    private readonly Surroundings around;

    /// <summary>The command with its options and sub-commands.</summary>
    public RackSideCommand(Surroundings around)
        : base("RackSide stands beside a squat rack and turns a full-body plan into the next right set.")
    {
        this.around = around;
        AddOptions();
        Subcommands.Add(new TodayCommand(this, around));
        Subcommands.Add(new SummaryCommand(this, around));
        Subcommands.Add(new CalendarCommand(this, around));
        Subcommands.Add(new AwayCommand(this, around));
        Subcommands.Add(new HistoryCommand(this, around));
        Subcommands.Add(new ForecastCommand(this, around));
        Subcommands.Add(new ReportCommand(this, around));
        Subcommands.Add(new EnterCommand(this, around));
        Subcommands.Add(new RedateCommand(this, around));
        Subcommands.Add(new PlatesCommand(this, around));
        Subcommands.Add(new KnownCommand(this, around));
        Subcommands.Add(new SoreCommand(this, around));
        Subcommands.Add(new WeighCommand(this, around));
        Subcommands.Add(new BodyCommand(this, around));
        Subcommands.Add(new BackupCommand(this, around));
        Subcommands.Add(new RestoreCommand(this, around));
        Subcommands.Add(new ExportCommand(this, around));
        Subcommands.Add(new ImportCommand(this, around));
        Subcommands.Add(new EraseCommand(this, around));
        Subcommands.Add(new LiftersCommand(this, around));
        Subcommands.Add(new GymCommand(this, around));
        Subcommands.Add(new CheckCommand(this, around));
        Subcommands.Add(new PlanCommand(this, around));
        SetAction(parsed => ScreenCommand.Run(this, around, parsed));
    }

    /// <summary>The folder that holds everything.</summary>
    public Option<string?> Data { get; } = new("--data") { Description = "Keep logbook and settings in this folder.", HelpName = "DIR", Recursive = true };

    /// <summary>A coach's plan.</summary>
    public Option<string?> PlanFile { get; } = new("--plan") { Description = "Train from this plan file for now, whatever plan was chosen.", HelpName = "FILE", Recursive = true };

    /// <summary>Who trains.</summary>
    public Option<string?> Who { get; } = new("--lifter") { Description = "Who trains; the first who joined if not said.", HelpName = "NAME", Recursive = true };

    /// <summary>With whom.</summary>
    public Option<string?> With { get; } = new("--with") { Description = "Share the bar with this lifter: two sessions, one screen.", HelpName = "NAME" };

    /// <summary>The invented gym.</summary>
    public Option<bool> Demo { get; } = new("--demo") { Description = "Open the invented Tollbooth gym with twelve weeks of history, in a temporary logbook.", Recursive = true };

    /// <summary>Where a traveller trains.</summary>
    public Option<string?> Zone { get; } = new("--zone") { Description = "The time zone you train in today, such as Asia/Tokyo; the gym's if not said.", HelpName = "ZONE", Recursive = true };

    /// <summary>No colour.</summary>
    public Option<bool> NoColour { get; } = new("--no-color") { Description = "Use no colour; bold and reverse stay." };

    /// <summary>No bell.</summary>
    public Option<bool> Silent { get; } = new("--silent") { Description = "Never ring the bell." };

    /// <summary>The colours.</summary>
    public Option<string?> LookOf { get; } = new("--look") { Description = "hues, grey or contrast; the gym's look if not said.", HelpName = "LOOK" };

    /// <summary>Only ASCII.</summary>
    public Option<bool> Ascii { get; } = new("--ascii") { Description = "Draw with the printable characters of ASCII alone." };

    /// <summary>Only what is read from the bar.</summary>
    public Option<bool> Big { get; } = new("--big") { Description = "Only the load and reps or the clock, as large as can be, and the keys." };

    /// <summary>A rack that several share.</summary>
    public Option<bool> Kiosk { get; } = new("--kiosk") { Description = "Ask who trains, come back to that when nobody presses a key, and never leave; for a screen that stays on." };

    /// <summary>Line by line.</summary>
    public Option<bool> Plain { get; } = new("--plain") { Description = "Line by line instead of a full screen: for screen readers and pipes." };

    /// <summary>The details of a fault.</summary>
    public Option<bool> Verbose { get; } = new(VerboseName) { Description = "Where something fails, show the details.", Recursive = true };

    /// <summary>Where the files lie that the options name.</summary>
    public Folders Places(ParseResult parsed) => Folders.Find(parsed.GetValue(Data), around.Environment);

    /// <summary>Opens the gym that the options name.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="begin">Whether a logbook is begun where there is none.</param>
    /// <param name="looks">Whether it is only looked at, so that a copy will do where it is open elsewhere.</param>
    /// <exception cref="Refusal">It cannot be opened.</exception>
    public Gym Open(ParseResult parsed, bool begin = true, bool looks = false) => parsed.GetValue(Demo)
        ? DemoGym.Open(parsed.GetValue(Data), parsed.GetValue(PlanFile), SystemTime.Start(around.Environment))
        : Gym.Open(Places(parsed), parsed.GetValue(PlanFile), SystemTime.Start(around.Environment), begin, abroad: Abroad(parsed), looks: looks);

    /// <summary>The house rules of the gym that the options name, without opening it; null before its first set-up.</summary>
    /// <exception cref="Refusal">Their file has mistakes.</exception>
    public HouseRules? Rules(ParseResult parsed) => parsed.GetValue(Demo)
        ? Tollbooth.Rules(SystemTime.Start(around.Environment).GetCurrentInstant().InZone(SystemTime.Zone()).Date)
        : Gym.RulesIn(Places(parsed));

    /// <summary>Today by this machine's clock, for what goes on without a gym.</summary>
    public LocalDate Today() => SystemTime.Start(around.Environment).GetCurrentInstant().InZone(SystemTime.Zone()).Date;

    private DateTimeZone? Abroad(ParseResult parsed) => parsed.GetValue(Zone) is not { } name ? null
        : TimeZones.Find(name)
            ?? throw new Refusal(ExitCode.Usage, $"--zone: \"{name}\" is no time zone; {(TimeZones.Meant(name) is { } meant ? $"did you mean {meant}?" : "write one such as Asia/Tokyo")}");

    private void AddOptions()
    {
        Options.Add(Data);
        Options.Add(PlanFile);
        Options.Add(Who);
        Options.Add(With);
        Options.Add(Demo);
        Options.Add(Zone);
        Options.Add(NoColour);
        Options.Add(Silent);
        Options.Add(LookOf);
        Options.Add(Ascii);
        Options.Add(Big);
        Options.Add(Kiosk);
        Options.Add(Plain);
        Options.Add(Verbose);
        Options.Remove(Options.OfType<HelpOption>().Single());
        Options.Add(new HelpOption("--help", "-h") { Description = "Show examples and options.", Action = new ExamplesFirst() });
        Options.OfType<VersionOption>().Single().Description = "Show the version.";
    }
}
