using System.CommandLine;
using RackSide.Files;
using RackSide.Json;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Commands;

/// <summary><c>rackside plates</c>: how a load goes on the bar with this gym's plates. It opens no logbook.</summary>
internal sealed class PlatesCommand : PrintingCommand
{
    private readonly Argument<string[]> weight = new("weight")
    {
        Description = "The load with its bar, such as 62.5, 62,5 or 135lb; the gym's unit if none is said.",
        HelpName = "WEIGHT",
        Arity = ArgumentArity.OneOrMore,
    };

    private readonly Option<string?> exercise = new("--for")
    {
        Description = "The exercise it is for, where a bar is kept for it.",
        HelpName = "EXERCISE",
    };

    /// <summary>The command.</summary>
    public PlatesCommand(RackSideCommand root, Surroundings around)
        : base("plates", "Which plates go on each side of the bar, from those this gym owns.", root, around)
    {
        weight.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(weight);
        Options.Add(exercise);
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        var entry = LoadEntry.Parse(string.Join(' ', parsed.GetValue(weight)!));
        var kit = Root.Rules(parsed)?.Kit;
        if (kit is null)
        {
            Around.Error.WriteLine("rackside: no kit is set up yet; this is with a default kit");
        }

        kit ??= KitDefaults.For(entry.Unit ?? MassUnit.Kilogram);
        var meant = parsed.GetValue(exercise) is { } name ? Meant(name, kit) : null;
        var loadable = BarLoading.Explain(new Mass(entry.Amount, entry.Unit ?? kit.Unit), kit, meant);
        return Print(
            parsed,
            PlatesText.Lines(loadable, kit, meant),
            () => PlatesJson.Of(loadable),
            JsonOutput.Shapes.PlatesJson);
    }

    private static Exercise Meant(string name, GymKit kit)
    {
        var said = name.Replace('_', ' ');
        var exercise = CatalogueFile.Read().All.FirstOrDefault(e =>
            new[] { e.Id, e.Name, e.ShortName }.Contains(said, StringComparer.OrdinalIgnoreCase))
            ?? throw new Refusal(ExitCode.Usage, $"--for: no exercise is called \"{name}\"; write one such as bb-curl");
        return exercise.LoadType != LoadType.Barbell ? throw new Refusal(ExitCode.Usage, $"--for: {exercise.Name} is not done with a bar and plates")
            : kit.BarsFor(exercise).Count == 0 ? throw new Refusal(ExitCode.Usage, $"--for: every bar here is kept for something else than {exercise.Name}")
            : exercise;
    }
}
