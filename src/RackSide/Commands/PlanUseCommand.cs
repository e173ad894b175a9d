using System.CommandLine;
using System.Text;
using RackSide.Files;
using RackSide.Kiosk;
using RackSide.Places;
using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.Commands;

/// <summary>
/// <c>rackside plan use</c>: from here on a lifter trains by another plan. The logbook stays as it is, and so do the loads:
/// an exercise goes on from what was lifted last.
/// </summary>
internal sealed class PlanUseCommand : Command
{
    private readonly Argument<string> chosen = new("name") { Description = "A name that rackside plan list shows, or a plan file.", HelpName = "NAME" };
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    /// <summary>The command.</summary>
    public PlanUseCommand(RackSideCommand root, Surroundings around)
        : base("use", "From here on train by this plan; the logbook and its loads stay.")
    {
        (this.root, this.around) = (root, around);
        chosen.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(chosen);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        using var gym = root.Open(parsed, begin: false);
        var lifter = gym.Joined(parsed.GetValue(root.Who));
        var name = Chosen(gym, parsed.GetValue(chosen)!);
        gym.Logbook.Keep(lifter with { Plan = name });
        gym.TrainBy(lifter with { Plan = name });
        around.Out.Print(PlainText.Wrap($"{lifter.Name} trains by \"{gym.Plan.Name}\" from here on; loads go on from the last ones of each exercise."));
        around.Out.Print(name is null ? [] : PlainText.Wrap($"The plan is the file {PlansHere.PathOf(gym.Folders, name)}; change it there."));
        around.Out.Print(OtherDays(gym, lifter).SelectMany(line => PlainText.Wrap(line)));
        return ExitCode.Ok;
    }

    /// <summary>The name it is kept by, its file in the gym's folder; null for the built-in plan.</summary>
    private static string? Chosen(Gym gym, string asked)
    {
        if (asked == ShippedPlans.BuiltIn)
        {
            return null;
        }

        if (asked.EndsWith(PlansHere.Ending, StringComparison.Ordinal))
        {
            return FromFile(gym, asked);
        }

        if (!PlansHere.Names(gym.Folders).Contains(asked))
        {
            Put(gym, asked, ShippedPlans.Names.Contains(asked) ? ShippedPlans.Text(asked) : throw new Refusal(ExitCode.Usage, Unknown(gym, asked)));
        }

        Good(PlansHere.Read(gym.Folders, asked, gym.Catalogue));
        return asked;
    }

    /// <summary>A file from elsewhere is copied into the gym's folder, where the kiosk and every lifter find it; a file there of that name with other words is not written over.</summary>
    private static string FromFile(Gym gym, string path)
    {
        if (!File.Exists(path))
        {
            throw new Refusal(ExitCode.NoInput, $"{path}: there is no such file; check the name and the folder");
        }

        Good(PlanFile.ReadFrom(path, gym.Catalogue));
        var (name, text) = (Path.GetFileNameWithoutExtension(path), File.ReadAllText(path));
        var there = PlansHere.PathOf(gym.Folders, name);
        if (File.Exists(there) && File.ReadAllText(there) != text)
        {
            throw new Refusal(ExitCode.Usage, $"{there} is there already and says something else; rename your file, or change that one");
        }

        Put(gym, name, text);
        return name;
    }

    private static void Put(Gym gym, string name, string text)
    {
        PrivateFolder.Make(gym.Folders.Config);
        PrivateFolder.Make(PlansHere.Folder(gym.Folders));
        PrivateFile.Write(PlansHere.PathOf(gym.Folders, name), Encoding.UTF8.GetBytes(text));
    }

    private static void Good(Reading<Plan> reading)
    {
        if (reading.Value is null)
        {
            throw new Refusal(ExitCode.Data, string.Join(Environment.NewLine, reading.Mistakes));
        }
    }

    private static string Unknown(Gym gym, string asked)
    {
        IReadOnlyList<string> names = [ShippedPlans.BuiltIn, .. ShippedPlans.Names, .. PlansHere.Names(gym.Folders)];
        return Nearest.To(asked, names) is { } meant ? $"no plan is called \"{asked}\"; did you mean {meant}?" : $"no plan is called \"{asked}\"; rackside plan list shows them";
    }

    /// <summary>What the lifter should know of weekdays and kit, a line each.</summary>
    private static IEnumerable<string> OtherDays(Gym gym, Lifter lifter)
    {
        if (gym.Rules is not { } rules)
        {
            yield break;
        }

        if (!rules.Rolls && !gym.Plan.Rolls && rules.TrainingDays.Count != gym.Plan.Week.Count)
        {
            yield return $"It has {gym.Plan.Week.Count} training days a week and this gym {rules.TrainingDays.Count}, so its own weekdays count: {string.Join(", ", gym.Plan.Week.Keys.Order())}.";
        }

        foreach (var standIn in gym.Plan.Days.SelectMany(day => Training.Planning.StandIns.For(day, gym.Catalogue, gym.Kit, lifter).Select(s => $"{day.Name}: {s.Text}")).Distinct())
        {
            yield return standIn;
        }
    }
}
