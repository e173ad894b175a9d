using NodaTime;

namespace RackSide.Demo;

/// <summary>How somebody sleeps, and the spell in which it goes badly. Every number is made up.</summary>
/// <param name="Hours">A usual night.</param>
/// <param name="Bad">The days whose nights are bad, counted from the first day, which is 0.</param>
/// <param name="BadHours">A bad night.</param>
internal sealed record Nights(double Hours, Range Bad, double BadHours)
{
    private const double Scatter = 0.6;
    private const int MinutesTold = 5;

    // Nobody tells of every night: about every second one.
    private const double Told = 0.5;

    /// <summary>The nights told of, by the day they ended in, to five minutes.</summary>
    /// <param name="seed">The seed of their chance, of its own, so that nothing else changes with it.</param>
    /// <param name="days">How many days there are.</param>
    public IEnumerable<(int Day, Duration Slept)> Over(int seed, int days)
    {
        var chance = new Random(seed);
        for (var day = 0; day < days; day++)
        {
            var (told, scatter) = (chance.NextDouble() < Told, Scatter * ((2 * chance.NextDouble()) - 1));
            var hours = (day >= Bad.Start.Value && day < Bad.End.Value ? BadHours : Hours) + scatter;
            if (told)
            {
                yield return (day, Duration.FromMinutes(MinutesTold * Math.Round(hours * 60 / MinutesTold)));
            }
        }
    }
}
