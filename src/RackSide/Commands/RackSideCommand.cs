using System.CommandLine;
using RackSide.Demo;
using RackSide.Places;
using RackSide.Time;

namespace RackSide.Commands;

/// <summary>The program's command line as a whole.</summary>
internal sealed class RackSideCommand : RootCommand
{
    private readonly Surroundings around;

    /// <summary>The command with its options and sub-commands.</summary>
    public RackSideCommand(Surroundings around)
        : base("RackSide stands beside a squat rack and turns a full-body plan into the next right set.")
    {
        this.around = around;
        Options.Add(Data);
        Options.Add(PlanFile);
        Options.Add(Who);
        Options.Add(Demo);
        Options.Add(NoColour);
        Options.Add(Silent);
        SetAction(parsed => ScreenCommand.Run(this, around, parsed));
    }

    /// <summary>The folder that holds everything.</summary>
    public Option<string?> Data { get; } = new("--data") { Description = "Keep logbook and settings in this folder.", HelpName = "DIR", Recursive = true };

    /// <summary>A coach's plan.</summary>
    public Option<string?> PlanFile { get; } = new("--plan") { Description = "Train from this plan file instead of the built-in plan.", HelpName = "FILE", Recursive = true };

    /// <summary>Who trains.</summary>
    public Option<string?> Who { get; } = new("--lifter") { Description = "Who trains; the first who joined if not said.", HelpName = "NAME", Recursive = true };

    /// <summary>The invented gym.</summary>
    public Option<bool> Demo { get; } = new("--demo") { Description = "Open the invented Tollbooth gym with twelve weeks of history, in a temporary logbook.", Recursive = true };

    /// <summary>No colour.</summary>
    public Option<bool> NoColour { get; } = new("--no-color") { Description = "Use no colour; bold and reverse stay." };

    /// <summary>No bell.</summary>
    public Option<bool> Silent { get; } = new("--silent") { Description = "Never ring the bell." };

    /// <summary>Opens the gym that the options name.</summary>
    /// <exception cref="Refusal">It cannot be opened.</exception>
    public Gym Open(ParseResult parsed) => parsed.GetValue(Demo)
        ? DemoGym.Open(parsed.GetValue(Data), parsed.GetValue(PlanFile), SystemTime.Start(around.Environment))
        : Gym.Open(Folders.Find(parsed.GetValue(Data), around.Environment), parsed.GetValue(PlanFile), SystemTime.Start(around.Environment));
}
