using RackSide.Training.Exercises;

namespace RackSide.Training.Skills;

/// <summary>
/// Play: variants of the same motion drawn for a day, for variety. The chance is not in here: the same seed gives the same
/// draw, and whoever wants another hands in another. The numbers come from the SplitMix64 mixing step (Steele, Lea and Flood
/// 2014, OOPSLA, from memory), which is enough for a draw and gives the same on every machine.
/// </summary>
public static class Play
{
    /// <summary>The variants in an order drawn by a seed; each stands in it once.</summary>
    /// <param name="variants">What there is to draw from.</param>
    /// <param name="seed">The chance, from outside.</param>
    /// <param name="slot">The slot's key, so that two slots with one seed do not draw alike.</param>
    public static IReadOnlyList<Exercise> Shuffled(IEnumerable<Exercise> variants, int seed, string slot)
    {
        var state = slot.Aggregate(unchecked((ulong)seed), (mixed, letter) => Mix(mixed ^ letter));
        var all = variants.ToList();
        for (var i = all.Count - 1; i > 0; i--)
        {
            state = Mix(state);
            var with = (int)(state % (ulong)(i + 1));
            (all[i], all[with]) = (all[with], all[i]);
        }

        return all;
    }

    private static ulong Mix(ulong x)
    {
        unchecked
        {
            x += 0x9E3779B97F4A7C15;
            x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9;
            x = (x ^ (x >> 27)) * 0x94D049BB133111EB;
            return x ^ (x >> 31);
        }
    }
}
