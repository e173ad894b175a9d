using System.CommandLine;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;

namespace RackSide.Commands;

/// <summary><c>rackside plan</c>: choosing a plan, and what a coach does with plan files.</summary>
internal sealed class PlanCommand : Command
{
    /// <summary>The command.</summary>
    public PlanCommand(RackSideCommand root, Surroundings around)
        : base("plan", "Plans: choose one, or try one on before anybody lifts.")
    {
        Subcommands.Add(new PlanListCommand(root, around));
        Subcommands.Add(new PlanUseCommand(root, around));
        Subcommands.Add(new PlanCheckCommand(root, around));
        Subcommands.Add(new PlanTryCommand(root, around));
    }
}

/// <summary><c>rackside plan check</c>: every mistake in a plan file at once.</summary>
internal sealed class PlanCheckCommand : Command
{
    private readonly Argument<string> file = new("file") { Description = "The plan, a YAML file.", HelpName = "FILE" };
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    /// <summary>The command.</summary>
    public PlanCheckCommand(RackSideCommand root, Surroundings around)
        : base("check", "Names every mistake in a plan file, by line, and what stands in where this gym lacks something.")
    {
        (this.root, this.around) = (root, around);
        file.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(file);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        var path = parsed.GetValue(file)!;
        var catalogue = CatalogueFile.Read();
        var reading = PlanFile.ReadFrom(path, catalogue);
        if (reading.Value is { } plan)
        {
            around.Out.Print([$"{path}: ok, \"{plan.Name}\", {plan.DaysAWeek} training {(plan.DaysAWeek == 1 ? "day" : "days")} a week"]);
            around.Out.Print(InThisGym(parsed, plan, catalogue));
            return ExitCode.Ok;
        }

        around.Error.Print(reading.Mistakes.Select(m => m.ToString()));
        return File.Exists(path) ? ExitCode.Data : ExitCode.NoInput;
    }

    /// <summary>What stands in in this gym; nothing before its first set-up.</summary>
    private IEnumerable<string> InThisGym(ParseResult parsed, Plan plan, Catalogue catalogue)
    {
        var nobody = new Lifter("", "", MassUnit.Kilogram, default);
        return root.Rules(parsed)?.Kit is not { } kit ? [] : plan.Days
            .SelectMany(day => StandIns.For(day, catalogue, kit, nobody).Select(s => $"{day.Name}: {s.Text}"))
            .Distinct()
            .SelectMany(line => PlainText.Wrap(line));
    }
}
