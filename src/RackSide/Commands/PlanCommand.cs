using System.CommandLine;
using RackSide.Files;

namespace RackSide.Commands;

/// <summary><c>rackside plan</c>: what a coach does with plan files.</summary>
internal sealed class PlanCommand : Command
{
    /// <summary>The command.</summary>
    public PlanCommand(Surroundings around)
        : base("plan", "For coaches: plan files.") => Subcommands.Add(new PlanCheckCommand(around));
}

/// <summary><c>rackside plan check</c>: every mistake in a plan file at once.</summary>
internal sealed class PlanCheckCommand : Command
{
    private readonly Argument<string> file = new("file") { Description = "The plan, a YAML file.", HelpName = "FILE" };
    private readonly Surroundings around;

    /// <summary>The command.</summary>
    public PlanCheckCommand(Surroundings around)
        : base("check", "Names every mistake in a plan file, by line.")
    {
        this.around = around;
        file.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(file);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        var path = parsed.GetValue(file)!;
        var reading = PlanFile.ReadFrom(path, CatalogueFile.Read());
        if (reading.Value is { } plan)
        {
            around.Out.Print([$"{path}: ok, \"{plan.Name}\", {plan.DaysAWeek} training {(plan.DaysAWeek == 1 ? "day" : "days")} a week"]);
            return ExitCode.Ok;
        }

        around.Error.Print(reading.Mistakes.Select(m => m.ToString()));
        return File.Exists(path) ? ExitCode.Data : ExitCode.NoInput;
    }
}
