using System.CommandLine;
using RackSide.Json;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Commands;

/// <summary><c>rackside lifters</c>: who trains here. It also takes away a PIN that was forgotten, which no screen can.</summary>
internal sealed class LiftersCommand : PrintingCommand
{
    private readonly Option<string?> forgotten = new("--remove-pin") { Description = "Remove the PIN of this lifter, who has forgotten it.", HelpName = "NAME" };

    /// <summary>The command.</summary>
    public LiftersCommand(RackSideCommand root, Surroundings around)
        : base("lifters", "Who trains here: unit, plan, and whether a PIN is asked for.", root, around) => Options.Add(forgotten);

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        var name = parsed.GetValue(forgotten);
        using var gym = Open(parsed, writes: name is not null);
        var done = name is null ? null : Remove(gym, name);
        var lifters = gym.Logbook.Lifters();
        return Print(parsed, [.. done is null ? [] : PlainText.Wrap(done), .. Lines(lifters)], () => LiftersJson.Of(lifters), JsonOutput.Shapes.LiftersJson);
    }

    private static string Remove(Gym gym, string name)
    {
        var lifter = gym.Joined(name);
        if (lifter.Pin is null)
        {
            throw new Refusal(ExitCode.Usage, $"--remove-pin: {lifter.Name} has no PIN");
        }

        gym.Logbook.Keep(lifter with { Pin = null });
        return $"the PIN of {lifter.Name} is removed";
    }

    private static IEnumerable<string> Lines(IReadOnlyList<Lifter> lifters) => lifters.Count == 0
        ? ["nobody has joined yet; start rackside to set up"]
        : lifters.Select(l => $"{l.Name.PadRight(lifters.Max(other => other.Name.Length))}  {l.Unit.Symbol()}  {(l.Pin is null ? "no PIN" : "PIN   ")}  plan: {l.Plan ?? "the gym's own"}");
}
