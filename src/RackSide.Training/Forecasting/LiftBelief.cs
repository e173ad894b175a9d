using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Forecasting;

/// <summary>
/// What the lifter's own sessions leave of many guesses (a particle filter: Gordon, Salmond and Smith 1993, IEE
/// Proceedings F 140(2):107-113, from memory). Each session keeps the guesses under which it was likely, oftener the
/// likelier it was. A set done as asked says only that there were as many reps; a set that fell short says how many.
/// </summary>
internal static class LiftBelief
{
    /// <summary>How surely a count tells the reps there were: lifters stop a rep early or grind one out.</summary>
    private const double RepsOfDoubt = 0.8;

    /// <summary>The guesses that fit the sessions, as many as asked for.</summary>
    /// <param name="past">The sessions looked at, oldest first; at least one.</param>
    /// <param name="lifted">Kilograms lifted at a load of the exercise.</param>
    /// <param name="guesses">How many guesses; 1 or more.</param>
    /// <param name="chance">Chance: each call gives a number from 0 up to 1, as from a seeded source.</param>
    public static IReadOnlyList<InventedLifter> From(
        IReadOnlyList<Performance> past, Func<Mass, double> lifted, int guesses, Func<double> chance)
    {
        var first = past.SelectMany(p => p.Sets).Select(s => s.Set.Load).OfType<Mass>().First();
        var all = Enumerable.Range(0, guesses).Select(_ => InventedLifter.Any(lifted(first), chance)).ToArray();
        for (var i = 0; i < past.Count; i++)
        {
            var days = i == 0 ? 0 : NodaTime.Period.DaysBetween(past[i - 1].Date, past[i].Date);
            all = Kept([.. all.Select(g => g.After(days))], past[i], lifted, chance);
        }

        return all;
    }

    private static InventedLifter[] Kept(InventedLifter[] all, Performance seen, Func<Mass, double> lifted, Func<double> chance)
    {
        var likely = all.Select(g => Likelihood(g, seen, lifted, chance)).ToArray();
        var sum = likely.Sum();
        return sum <= 0 ? all : [.. Drawn(likely, sum, chance).Select(i => all[i].Nearby(chance))];
    }

    /// <summary>Systematic resampling: one throw, then equal steps along the summed likelihoods.</summary>
    private static IEnumerable<int> Drawn(double[] likely, double sum, Func<double> chance)
    {
        var (step, at, i) = (sum / likely.Length, chance() * sum / likely.Length, 0);
        var reached = likely[0];
        for (var n = 0; n < likely.Length; n++, at += step)
        {
            while (reached < at && i < likely.Length - 1)
            {
                reached += likely[++i];
            }

            yield return i;
        }
    }

    private static double Likelihood(InventedLifter guess, Performance seen, Func<Mass, double> lifted, Func<double> chance)
    {
        var form = guess.FormOf(chance);
        return seen.Sets.Where(s => s.Set.Load is not null).Select((s, i) => OfSet(guess.RepsAt(lifted(s.Set.Load!.Value), i, form), s.Set))
            .Aggregate(1.0, (a, b) => a * b);
    }

    private static double OfSet(double reps, SetDone set) => set.Done >= set.Target
        ? 1 / (1 + Math.Exp((set.Target - reps) / (RepsOfDoubt / 2)))
        : Math.Exp(-Math.Pow((reps - set.Done - 0.5) / RepsOfDoubt, 2) / 2);
}
