using System.CommandLine;
using RackSide.Json;

namespace RackSide.Commands;

/// <summary><c>rackside history</c>: every session of an exercise or a slot, set by set.</summary>
internal sealed class HistoryCommand : PrintingCommand
{
    private readonly Argument<string[]> exercise = new("exercise")
    {
        Description = "An exercise's id or name, a part of its name, or a slot of the plan.",
        HelpName = "EXERCISE",
        Arity = ArgumentArity.OneOrMore,
    };

    /// <summary>The command.</summary>
    public HistoryCommand(RackSideCommand root, Surroundings around)
        : base("history", "Every session of an exercise: sets, loads, whether the targets were met, and why they were.", root, around)
    {
        exercise.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(exercise);
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        using var gym = Open(parsed);
        var lifter = Who(gym, parsed);
        var history = gym.History(lifter);
        var asked = new ExerciseSearch(gym.Catalogue, gym.Plan, history).Find(string.Join(' ', parsed.GetValue(exercise)!));
        var sessions = asked.In(history);
        TellNewcomer(lifter);
        return Print(
            parsed,
            new HistoryText(gym.Catalogue, asked, sessions).Lines(),
            () => HistoryJson.Of(gym.Catalogue, lifter, asked, sessions),
            JsonOutput.Shapes.HistoryJson);
    }
}
