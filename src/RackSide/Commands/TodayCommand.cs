using System.CommandLine;
using System.Globalization;
using NodaTime;
using RackSide.Json;
using RackSide.Training.Planning;

namespace RackSide.Commands;

/// <summary><c>rackside today</c>: what today asks for, and why.</summary>
internal sealed class TodayCommand : PrintingCommand
{
    private readonly Option<string?> minutes = new("--minutes") { Description = "The plan in so many minutes: what matters least is left out first.", HelpName = "MINUTES" };

    /// <summary>The command.</summary>
    public TodayCommand(RackSideCommand root, Surroundings around)
        : base("today", "What today asks for: exercises, loads, warm-up sets, rests, and why.", root, around) => Options.Add(minutes);

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        var time = parsed.GetValue(minutes) is { } typed ? Minutes(typed) : (Duration?)null;
        using var gym = Open(parsed);
        var lifter = Who(gym, parsed);
        TellNewcomer(lifter, gym.Rules is null ? "This is for a newcomer with a default kit." : "This is for a newcomer.");
        var todays = gym.TodaysPlan(lifter);
        todays = time is { } there ? Planner.Within(todays, there, gym.Catalogue, gym.Kit, gym.Recent(lifter)) : todays;
        var open = gym.Logbook.Open(lifter.Key);
        return Print(
            parsed,
            new TodayText(gym, lifter, todays, open).Lines(),
            () => TodayJson.Of(gym, lifter, todays, open),
            JsonOutput.Shapes.TodayJson);
    }

    private static Duration Minutes(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var minutes)
        && minutes is >= TimeBudget.LeastMinutes and <= TimeBudget.MostMinutes
            ? Duration.FromMinutes(minutes)
            : throw new Refusal(ExitCode.Usage, $"--minutes: \"{text}\" will not do; write {TimeBudget.LeastMinutes} to {TimeBudget.MostMinutes}, such as 35");
}
