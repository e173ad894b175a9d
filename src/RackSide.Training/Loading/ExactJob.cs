using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>
/// A job in whole numbers. Sets in a row that ask for the same are one set done several times: of two stacks for two such
/// neighbours the better one can serve both, which never handles more plates, because going there by a detour is never
/// shorter.
/// </summary>
internal sealed class ExactJob
{
    /// <summary>No sleeve takes more plates of one kind: 31 of the thinnest discs are longer than it.</summary>
    private const int MostOfAKind = 31;

    private readonly ExactUnit unit;

    public ExactJob(PlateJob job)
    {
        unit = new ExactUnit([job.Bar, .. job.Start, .. job.Plates.Select(p => p.Mass), .. job.Sets.SelectMany(s => new[] { s.Ideal, s.Low, s.High })]);
        Bar = unit.Of(job.Bar);
        (Sets, SetOf) = Merged([.. job.Sets.Select(s => new ExactBand(unit.Of(s.Ideal), unit.Of(s.Low), unit.Of(s.High), 1))]);
        Heaviest = Sets.Max(s => s.High);
        var owned = job.Plates.Select(p => (p.Mass, Count: Math.Max(p.Pairs, 0)))
            .Concat(job.Start.Distinct().Select(p => (Mass: p, Count: 0)))
            .Where(p => p.Mass.Amount > 0)
            .GroupBy(p => p.Mass)
            .Select(g => (g.Key, Count: Math.Max(g.Sum(p => p.Count), job.Start.Count(s => s == g.Key)), Worn: job.Start.Count(s => s == g.Key)))
            .Where(p => p.Count > 0)
            .OrderByDescending(p => p.Key)
            .ToList();
        Kinds = [.. owned.Select(p => p.Key)];
        Twice = [.. Kinds.Select(k => 2 * unit.Of(k))];
        Counts = Capped([.. owned.Select((p, i) => Math.Max(p.Worn, Math.Min(p.Count, (int)Math.Min(MostOfAKind, Math.Max(Heaviest - Bar, 0) / Twice[i]))))]);
        Start = [.. job.Start.Where(p => p.Amount > 0).Select(p => Array.IndexOf(Kinds, p))];
        (HeaviestInside, StrippedAtEnd, Room) = (job.HeaviestInside, job.StrippedAtEnd, job.Room);
        Sleeve = job.Sleeve is { } sleeve ? Width(sleeve) : null;
        Widths = [.. Kinds.Select(k => Sleeve is null ? 0 : Width(job.Plates.FirstOrDefault(p => p.Mass == k)?.Thickness ?? 0))];
    }

    /// <summary>The bar.</summary>
    public long Bar { get; }

    /// <summary>The bands, neighbours that are alike merged.</summary>
    public ExactBand[] Sets { get; }

    /// <summary>For each set of the job its place in <see cref="Sets"/>.</summary>
    public int[] SetOf { get; }

    /// <summary>The most that any set may weigh.</summary>
    public long Heaviest { get; }

    /// <summary>The kinds of plates, heaviest first.</summary>
    public Mass[] Kinds { get; }

    /// <summary>The mass of a pair of each kind.</summary>
    public long[] Twice { get; }

    /// <summary>How many of each kind one sleeve can get.</summary>
    public int[] Counts { get; }

    /// <summary>The kinds on the sleeve beforehand, inside to outside.</summary>
    public int[] Start { get; }

    public bool HeaviestInside { get; }

    public bool StrippedAtEnd { get; }

    public int? Room { get; }

    /// <summary>The room on a sleeve in ten-thousandths of a millimetre; null where it is not told.</summary>
    public long? Sleeve { get; }

    /// <summary>How much of it a plate of each kind takes.</summary>
    public long[] Widths { get; }

    /// <summary>
    /// How far a load is from a band's ideal, for each time it is done. Last in it are counted the sets over their ideal,
    /// too few to weigh against one unit, so that of two loads equally near the lighter is better.
    /// </summary>
    public long Deviation(long load, ExactBand band) =>
        ((Math.Abs(load - band.Ideal) * Over) + (load > band.Ideal ? 1 : 0)) * band.Times;

    /// <summary>A sum of deviations in kilograms.</summary>
    public decimal Kilograms(long deviation) => unit.Kilograms(deviation / Over);

    private static long Width(decimal millimetres) => decimal.ToInt64(millimetres * 10_000);

    private long Over => SetOf.Length + 1;

    private static (ExactBand[] Sets, int[] SetOf) Merged(ExactBand[] all)
    {
        List<ExactBand> sets = [];
        var setOf = new int[all.Length];
        for (var i = 0; i < all.Length; i++)
        {
            if (sets.Count > 0 && sets[^1] with { Times = 1 } == all[i])
            {
                sets[^1] = sets[^1] with { Times = sets[^1].Times + 1 };
            }
            else
            {
                sets.Add(all[i]);
            }

            setOf[i] = sets.Count - 1;
        }

        return ([.. sets], setOf);
    }

    /// <summary>Fewer of a kind where a gym has so many kinds that the ways to pick from them could not be numbered.</summary>
    private static int[] Capped(int[] counts)
    {
        while (counts.Aggregate(0.0, (bits, n) => bits + Math.Log2(n + 1)) > 62)
        {
            var most = counts.Max();
            counts = [.. counts.Select(n => Math.Min(n, most - 1))];
        }

        return counts;
    }
}

/// <summary>A band in whole numbers.</summary>
/// <param name="Ideal">The load aimed at.</param>
/// <param name="Low">The lightest that will do.</param>
/// <param name="High">The heaviest that will do.</param>
/// <param name="Times">How many sets in a row ask for it.</param>
internal readonly record struct ExactBand(long Ideal, long Low, long High, int Times);
