using System.CommandLine;
using RackSide.Json;
using RackSide.Training.History;

namespace RackSide.Commands;

/// <summary><c>rackside history</c>: the sessions of an exercise or a slot, set by set, and the records among all of them.</summary>
internal sealed class HistoryCommand : PrintingCommand
{
    private readonly Argument<string[]> exercise = new("exercise")
    {
        Description = "An exercise's id or name, a part of its name, or a slot of the plan.",
        HelpName = "EXERCISE",
        Arity = ArgumentArity.OneOrMore,
    };

    // More than a year of a lift that is trained once a week; what scrolls past is not read.
    private const int Shown = 60;

    private readonly Option<bool> all = new("--all") { Description = $"Print every session; as text the newest {Shown} if not said, as JSON all." };

    /// <summary>The command.</summary>
    public HistoryCommand(RackSideCommand root, Surroundings around)
        : base("history", "The sessions of an exercise: sets, loads, whether the targets were met, and why they were.", root, around)
    {
        exercise.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(exercise);
        Options.Add(all);
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        using var gym = Open(parsed);
        var lifter = Who(gym, parsed);
        var cards = gym.Logbook.Cards(lifter.Key);
        var asked = new ExerciseSearch(gym.Catalogue, gym.Plan, cards).Find(string.Join(' ', parsed.GetValue(exercise)!));
        List<SessionCard> done = [.. cards.Where(asked.In)];
        var records = asked.Records(gym.Catalogue, done);
        TellNewcomer(lifter);
        return Print(
            parsed,
            new HistoryText(gym.Catalogue, asked, asked.Count(done), Read(gym, lifter, asked, parsed.GetValue(all) ? done : done.TakeLast(Shown)), records).Lines(),
            () => HistoryJson.Of(gym.Catalogue, lifter, asked, Read(gym, lifter, asked, done), records),
            JsonOutput.Shapes.HistoryJson);
    }

    private static IReadOnlyList<Performance> Read(Gym gym, Lifter lifter, ExerciseAsked asked, IEnumerable<SessionCard> sessions) =>
        asked.In(new TrainingHistory(gym.Logbook.Sessions(lifter.Key, sessions.Select(c => c.Id).ToHashSet())));
}
