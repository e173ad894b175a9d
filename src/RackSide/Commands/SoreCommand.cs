using System.CommandLine;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Progression;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary><c>rackside sore</c>: a motion hurts, so that it is spared next time; it says what to spare and is no diagnosis.</summary>
internal sealed class SoreCommand : Command
{
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    private readonly Argument<string[]> motion = new("motion")
    {
        Description = "A motion such as squat or vertical pull, or an exercise of it.",
        HelpName = "MOTION",
        Arity = ArgumentArity.OneOrMore,
    };

    private readonly Option<bool> takeBack = new("--take-back") { Description = "Take back what was told; it was not sore." };

    /// <summary>The command.</summary>
    public SoreCommand(RackSideCommand root, Surroundings around)
        : base("sore", "Tell a sore motion: it is lighter next time, until a session of it was done with honest form.")
    {
        (this.root, this.around) = (root, around);
        motion.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(motion);
        Options.Add(takeBack);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        using var gym = root.Open(parsed, begin: false);
        var lifter = gym.Joined(parsed.GetValue(root.Who));
        var meant = Meant(string.Join(' ', parsed.GetValue(motion)!), gym, lifter);
        around.Out.Print(PlainText.Wrap(parsed.GetValue(takeBack) ? TakeBack(gym, lifter, meant) : Tell(gym, lifter, meant)));
        return ExitCode.Ok;
    }

    private static string Tell(Gym gym, Lifter lifter, Motion motion)
    {
        gym.Logbook.Tell(lifter.Key, new SoreTold(gym.Logbook.NextId(), gym.Clock.GetCurrentInstant(), gym.Today, motion));
        return $"{motion.Name()} told sore on {gym.Today.Short()}: it is lighter next time. In training, {Sparing.Caution}.";
    }

    private static string TakeBack(Gym gym, Lifter lifter, Motion motion)
    {
        var told = gym.Recent(lifter).Told.OfType<SoreTold>().LastOrDefault(s => s.Motion == motion)
            ?? throw new Refusal(ExitCode.Usage, $"{motion.Name()} was not told sore, so there is nothing to take back");
        gym.TakeBack(lifter, told);
        return $"taken back: {motion.Name()} told sore on {told.On.Short()}";
    }

    /// <summary>A motion's own name, or that of an exercise or a slot.</summary>
    private static Motion Meant(string text, Gym gym, Lifter lifter)
    {
        var typed = text.Trim().Replace('_', ' ').Replace('-', ' ');
        var named = Enum.GetValues<Motion>().Where(m => m != Motion.Preparation && string.Equals(m.Name(), typed, StringComparison.OrdinalIgnoreCase)).ToList();
        if (named.Count > 0)
        {
            return named[0];
        }

        var asked = new ExerciseSearch(gym.Catalogue, gym.Plan, gym.Logbook.Cards(lifter.Key)).Find(text);
        return asked.Exercise?.Motion ?? gym.Plan.Days.SelectMany(d => d.Slots).FirstOrDefault(s => s.Key == asked.Slot)?.Motion
            ?? throw new Refusal(ExitCode.Usage, $"\"{text}\" is no slot of this plan; name a motion, such as {YamlValues.MotionWord(Motion.Squat)}");
    }
}
