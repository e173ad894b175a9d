using System.CommandLine;
using System.Text.Json.Serialization.Metadata;
using RackSide.Json;
using RackSide.Training.History;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary>A command that reads and prints, as text or as JSON, and makes nothing on disk.</summary>
internal abstract class PrintingCommand : Command
{
    private readonly Option<bool> json = new("--json") { Description = "Print JSON instead of text." };

    /// <summary>A command with its option for JSON.</summary>
    protected PrintingCommand(string name, string description, RackSideCommand root, Surroundings around)
        : base(name, description)
    {
        (Root, Around) = (root, around);
        Options.Add(json);
        SetAction(Run);
    }

    /// <summary>The program's command.</summary>
    protected RackSideCommand Root { get; }

    /// <summary>The streams.</summary>
    protected Surroundings Around { get; }

    /// <summary>Does it.</summary>
    /// <returns>The exit code.</returns>
    protected abstract int Run(ParseResult parsed);

    /// <summary>Prints what was found, one way or the other.</summary>
    protected int Print<T>(ParseResult parsed, IEnumerable<string> text, Func<T> data, JsonTypeInfo<T> type)
    {
        if (parsed.GetValue(json))
        {
            JsonOutput.Write(Around.Out, data(), type);
        }
        else
        {
            Around.Out.Print(text);
        }

        return ExitCode.Ok;
    }

    /// <summary>Opens the gym, and says what opening the logbook had to tell; where it is open elsewhere and nothing is to be written, of what moment its copy is.</summary>
    protected Gym Open(ParseResult parsed, bool writes = false)
    {
        var gym = Root.Open(parsed, begin: false, looks: !writes);
        Around.Error.Print(gym.Report is { } report ? PlainText.Wrap($"rackside: {report}") : []);
        Around.Error.Print(gym.Doubt() is { } doubt ? PlainText.Wrap($"rackside: {Doubted(gym, doubt)}") : []);
        return gym;
    }

    private static string Doubted(Gym gym, ClockDoubt doubt)
    {
        var than = doubt.Last is { } last ? $", {(doubt.Behind ? "before" : "more than a year after")} the last entry, of {last.InZone(gym.Zone).Date.Shown()}" : "";
        return $"the clock shows {gym.Today.Shown()}{than}; set it, or start rackside, which asks for the date";
    }

    /// <summary>Who is asked about. The plan is the lifter's from here on. Where nobody has joined a newcomer without a name stands in, who is kept from head-down work.</summary>
    protected Lifter Who(Gym gym, ParseResult parsed)
    {
        var lifter = gym.Lifter(parsed.GetValue(Root.Who)) ?? new Lifter("", "", gym.Kit.Unit, gym.Clock.GetCurrentInstant(), AvoidInverted: true);
        Around.Error.Print(gym.TrainBy(lifter) is { } trouble ? PlainText.Wrap($"rackside: {trouble}") : []);
        return lifter;
    }

    /// <summary>Says so where nobody has joined.</summary>
    protected void TellNewcomer(Lifter lifter, string instead = "")
    {
        if (lifter.Name.Length == 0)
        {
            Around.Error.Print(PlainText.Wrap($"rackside: nobody has joined yet; start rackside to set up. {instead}".TrimEnd()));
        }
    }
}
