using System.CommandLine;
using RackSide.Json;

namespace RackSide.Commands;

/// <summary><c>rackside today</c>: what today asks for, and why.</summary>
internal sealed class TodayCommand(RackSideCommand root, Surroundings around)
    : PrintingCommand("today", "What today asks for: exercises, loads, warm-up sets, rests, and why.", root, around)
{
    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        using var gym = Open(parsed);
        var lifter = Who(gym, parsed);
        TellNewcomer(lifter, gym.Rules is null ? "This is for a newcomer with a default kit." : "This is for a newcomer.");
        var todays = gym.TodaysPlan(lifter);
        var open = gym.Logbook.Open(lifter.Key);
        return Print(
            parsed,
            new TodayText(gym, lifter, todays, open).Lines(),
            () => TodayJson.Of(gym, lifter, todays, open),
            JsonOutput.Shapes.TodayJson);
    }
}
