using System.CommandLine;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary><c>rackside known</c>: a set done elsewhere, to begin an exercise from.</summary>
internal sealed class KnownCommand : Command
{
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    private readonly Argument<string[]> set = new("set")
    {
        Description = "An exercise, the load with its bar, and the reps of the set: 1 to 12.",
        HelpName = "EXERCISE LOAD REPS",
        Arity = ArgumentArity.OneOrMore,
    };

    private readonly Option<bool> takeBack = new("--take-back") { Description = "Take back what was told of the exercise." };

    /// <summary>The command.</summary>
    public KnownCommand(RackSideCommand root, Surroundings around)
        : base("known", "Tell a set you did elsewhere lately, so that the first session of its exercise begins from it.")
    {
        (this.root, this.around) = (root, around);
        set.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(set);
        Options.Add(takeBack);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        using var gym = root.Open(parsed, begin: false);
        var lifter = gym.Joined(parsed.GetValue(root.Who));
        var words = parsed.GetValue(set)!;
        around.Out.Print(PlainText.Wrap(parsed.GetValue(takeBack) ? TakeBack(gym, lifter, words) : Tell(gym, lifter, words)));
        return ExitCode.Ok;
    }

    private static string Tell(Gym gym, Lifter lifter, string[] words)
    {
        var (name, typed, reps) = Parts(words);
        var exercise = Meant(gym, lifter, name);
        var entry = LoadEntry.Parse(typed);
        var load = new Mass(entry.Amount, entry.Unit ?? gym.Kit.Unit);
        if ((Refusal(gym, lifter, exercise) ?? KnownSets.Refusal(load, NumberEntry.Parse(reps) ?? 0)) is { } refusal)
        {
            throw new Refusal(ExitCode.Usage, $"{exercise.Name}: {refusal}");
        }

        gym.Logbook.Tell(lifter.Key, new SetKnown(gym.Logbook.NextId(), gym.Clock.GetCurrentInstant(), gym.Today, exercise.Id, (int)NumberEntry.Parse(reps)!.Value, load));
        return $"{exercise.Name}: {load} x {reps} kept on {gym.Today.Short()}; the first session here begins below it, with reps to spare.";
    }

    private static string TakeBack(Gym gym, Lifter lifter, string[] words)
    {
        var exercise = Meant(gym, lifter, string.Join(' ', words));
        var known = gym.Recent(lifter).Told.OfType<SetKnown>().LastOrDefault(k => k.Exercise == exercise.Id)
            ?? throw new Refusal(ExitCode.Usage, $"{exercise.Name}: no set was told, so there is nothing to take back");
        gym.TakeBack(lifter, known);
        return $"taken back: {exercise.Name}, {known.Load} x {known.Reps}, told on {known.On.Short()}";
    }

    private static string? Refusal(Gym gym, Lifter lifter, Exercise exercise) =>
        !KnownSets.CanBeTold(exercise) ? "its load is not all of what is lifted, so no set of it can be begun from"
        : gym.Recent(lifter).Of(exercise.Id).LastOrDefault() is { } last ? $"trained here on {last.Date.Short()}, so it goes on from its own sessions"
        : null;

    /// <summary>The last word is the reps, the one before it the load, with its unit where that stands apart.</summary>
    private static (string Exercise, string Load, string Reps) Parts(string[] words)
    {
        var unit = words.Length > 3 && MassUnits.Parse(words[^2]) is not null ? 1 : 0;
        return words.Length >= 3
            ? (string.Join(' ', words[..^(2 + unit)]), string.Join("", words[^(2 + unit)..^1]), words[^1])
            : throw new Refusal(ExitCode.Usage, "known needs EXERCISE LOAD REPS; see rackside known --help");
    }

    private static Exercise Meant(Gym gym, Lifter lifter, string name)
    {
        var asked = new ExerciseSearch(gym.Catalogue, gym.Plan, gym.Logbook.Cards(lifter.Key)).Find(name);
        return asked.Exercise
            ?? gym.Plan.Days.SelectMany(d => d.Slots).Where(s => s.Key == asked.Slot).Select(s => Planner.Fill(s, gym.Catalogue, gym.Kit, lifter)).OfType<Exercise>().FirstOrDefault()
            ?? throw new Refusal(ExitCode.Usage, $"nothing in this kit fills the slot {asked.Slot}; name an exercise");
    }
}
