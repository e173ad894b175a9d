using System.CommandLine;
using RackSide.Json;
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

    /// <summary>The command.</summary>
    public PlatesCommand(RackSideCommand root, Surroundings around)
        : base("plates", "Which plates go on each side of the bar, from those this gym owns.", root, around)
    {
        weight.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(weight);
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
        var loadable = BarLoading.Explain(new Mass(entry.Amount, entry.Unit ?? kit.Unit), kit);
        return Print(
            parsed,
            PlatesText.Lines(loadable, kit),
            () => PlatesJson.Of(loadable),
            JsonOutput.Shapes.PlatesJson);
    }
}
