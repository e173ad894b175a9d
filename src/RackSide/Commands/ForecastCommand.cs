using System.CommandLine;
using RackSide.Json;
using RackSide.Training.Forecasting;
using RackSide.Training.History;

namespace RackSide.Commands;

/// <summary><c>rackside forecast</c>: where the main lifts may be in the weeks to come.</summary>
internal sealed class ForecastCommand : PrintingCommand
{
    // The same every time, so that asking twice gives the same answer.
    private const int Seed = 1;

    private const int BarWidth = 24;

    /// <summary>The command.</summary>
    public ForecastCommand(RackSideCommand root, Surroundings around)
        : base("forecast", "Where the main lifts may be in twelve weeks, with an honest span.", root, around)
    {
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        using var gym = Open(parsed);
        var lifter = Who(gym, parsed);
        TellNewcomer(lifter);
        var weight = gym.Logbook.WeighIns(lifter.Key).LastOrDefault()?.Weight;
        var forecast = Forecast.For(gym.Plan, gym.Catalogue, gym.Kit, lifter, gym.History(lifter), weight, gym.Today, new Random(Seed).NextDouble, Told);
        return Print(parsed, ForecastText.Lines(forecast), () => ForecastJson.Of(lifter, forecast), JsonOutput.Shapes.ForecastJson);
    }

    /// <summary>A bar on a terminal, overwritten until it is done; nothing where messages may go to a file.</summary>
    private void Told(int done, int of)
    {
        if (Around.TerminalSize() is null)
        {
            return;
        }

        var full = BarWidth * done / of;
        Around.Error.Write(done < of ? $"\rreckoning [{new string('=', full)}{new string(' ', BarWidth - full)}]" : $"\r{new string(' ', BarWidth + 12)}\r");
    }
}
