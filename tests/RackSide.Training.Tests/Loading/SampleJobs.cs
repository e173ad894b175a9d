using CsCheck;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>Random rows of sets on small gyms.</summary>
internal static class SampleJobs
{
    private static readonly Mass[] Discs =
        [Mass.Kg(20), Mass.Kg(15), Mass.Kg(10), Mass.Kg(5), Mass.Kg(2.5m), Mass.Kg(1.25m), Mass.Lb(45), Mass.Lb(10), Mass.Lb(2.5m)];

    /// <summary>
    /// Up to four kinds of plates in both units, up to two pairs each; one to six sets that aim anywhere, so that loads go
    /// up and down; with and without a start stack, a stripped bar, and the heaviest inside.
    /// </summary>
    public static Gen<PlateJob> Small { get; } =
        from kinds in Gen.Shuffle(Discs)
        from pairs in Gen.Int[0, 2].Array[4]
        from bar in Gen.OneOf(Mass.Kg(20), Mass.Lb(45))
        from sets in Gen.Int[0, 100].Array[1, 6]
        from width in Gen.Int[1, 8]
        from again in Gen.Int[0, 2]
        from worn in Gen.Int[0, 3]
        from heaviestInside in Gen.Bool
        from stripped in Gen.Bool
        select Job([.. kinds.Zip(pairs, (mass, n) => new PlatePairs(mass, n))], bar, [.. sets, .. Enumerable.Repeat(sets[^1], again)], width) with
        {
            Start = Start(kinds.Zip(pairs), worn, heaviestInside),
            HeaviestInside = heaviestInside,
            StrippedAtEnd = stripped,
        };

    /// <summary>The same from a bare bar with a short sleeve and plates of all thicknesses, some of them not told.</summary>
    public static Gen<PlateJob> Narrow { get; } =
        from job in Small
        from sleeve in Gen.Int[10, 90]
        from widths in Gen.Int[0, 45].Array[job.Plates.Count]
        select job with
        {
            Start = [],
            Sleeve = sleeve,
            Plates = [.. job.Plates.Zip(widths, (p, w) => p with { Thickness = w == 0 ? null : w })],
        };

    private static PlateJob Job(PlatePairs[] plates, Mass bar, int[] sets, int width)
    {
        var most = plates.Sum(p => 2 * p.Pairs * p.Mass.Kilograms);
        return new()
        {
            Bar = bar,
            Plates = plates,
            Sets = [.. sets.Select(share => bar.Kilograms + (most * share / 100))
                .Select(ideal => new LoadBand(Mass.Kg(ideal), Mass.Kg(ideal - width), Mass.Kg(ideal + width)))],
        };
    }

    private static Mass[] Start(IEnumerable<(Mass Mass, int Pairs)> plates, int worn, bool heaviestInside)
    {
        var all = plates.SelectMany(p => Enumerable.Repeat(p.Mass, p.Pairs)).Take(worn);
        return heaviestInside ? [.. all.OrderDescending()] : [.. all];
    }
}
