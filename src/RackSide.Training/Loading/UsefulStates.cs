namespace RackSide.Training.Loading;

/// <summary>
/// The states of a sleeve from which at least one of some bands can still be served, each with the bands it can serve by
/// putting more plates on. A state that cannot serve all sets of a row is never under that row, so it need not be tried.
/// </summary>
internal sealed class UsefulStates
{
    private readonly int kinds;

    public UsefulStates(ExactJob job, SleeveStates sleeve, ExactBand[] bands)
    {
        kinds = job.Kinds.Length;
        var serves = Served(sleeve, bands);
        var kept = Enumerable.Range(0, sleeve.Count).Where(s => serves[s] != 0 || sleeve.StartPath.Contains(s)).ToList();
        var number = new int[sleeve.Count];
        Array.Fill(number, -1);
        for (var i = 0; i < kept.Count; i++)
        {
            number[kept[i]] = i;
        }

        (Serves, Loads) = ([.. kept.Select(s => serves[s])], new long[kept.Count]);
        Next = new int[kept.Count * kinds];
        for (var i = 0; i < kept.Count; i++)
        {
            Loads[i] = sleeve.Loads[kept[i]];
            for (var kind = 0; kind < kinds; kind++)
            {
                Next[(i * kinds) + kind] = sleeve.Next[(kept[i] * kinds) + kind] is >= 0 and var more ? number[more] : -1;
            }
        }

        StartPath = [.. sleeve.StartPath.Select(s => number[s])];
    }

    /// <summary>How many there are; 0 is the bare bar.</summary>
    public int Count => Loads.Length;

    /// <summary>The load of each.</summary>
    public long[] Loads { get; }

    /// <summary>The bands that each can serve as it is or with more plates on, a bit for each band.</summary>
    public ulong[] Serves { get; }

    /// <summary>The states of the start stack, from the bare bar outwards.</summary>
    public int[] StartPath { get; }

    private int[] Next { get; }

    /// <summary>For each kind the state with one such plate more, or -1.</summary>
    public ReadOnlySpan<int> After(int state) => Next.AsSpan(state * kinds, kinds);

    /// <summary>The bit of a band; bands beyond the sixty-third share one, which only makes the search look at more.</summary>
    public static ulong Bit(int band) => 1UL << Math.Min(band, 63);

    private ulong[] Served(SleeveStates sleeve, ExactBand[] bands)
    {
        var (serves, known) = (new ulong[sleeve.Count], new bool[sleeve.Count]);
        for (var state = 0; state < sleeve.Count; state++)
        {
            Of(state, sleeve, bands, serves, known);
        }

        return serves;
    }

    private ulong Of(int state, SleeveStates sleeve, ExactBand[] bands, ulong[] serves, bool[] known)
    {
        if (known[state])
        {
            return serves[state];
        }

        known[state] = true;
        for (var band = 0; band < bands.Length; band++)
        {
            serves[state] |= sleeve.Loads[state] >= bands[band].Low && sleeve.Loads[state] <= bands[band].High ? Bit(band) : 0;
        }

        for (var kind = 0; kind < kinds; kind++)
        {
            serves[state] |= sleeve.Next[(state * kinds) + kind] is >= 0 and var more ? Of(more, sleeve, bands, serves, known) : 0;
        }

        return serves[state];
    }
}
