using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Oracle;

/// <summary>Random rows of sets on random gyms, the same for the same seed.</summary>
internal sealed class Jobs(int seed)
{
    private static readonly decimal[] Discs = [25, 20, 15, 10, 5, 2.5m, 1.25m, 0.5m];

    private readonly Random random = new(seed);

    /// <summary>
    /// One lifter's ramp and working sets: eight kinds of plates, up to two pairs (one of the small ones), at most seven a
    /// side; half with the heaviest inside, a third from a start stack, a quarter with the bar left loaded.
    /// </summary>
    public PlateJob Ramp()
    {
        var plates = Plates();
        var bar = 10 + (5 * random.Next(3));
        return Job(plates, bar, Sets(plates, bar, random.Next(1, 4))) with
        {
            Start = random.Next(3) == 0 ? Start(plates) : [],
            StrippedAtEnd = random.Next(4) > 0,
        };
    }

    /// <summary>Two lifters who share a bar and take turns set by set.</summary>
    public PlateJob TwoOnOneBar()
    {
        var plates = Plates();
        var bar = 10 + (5 * random.Next(3));
        return Job(plates, bar, [.. Sets(plates, bar, 2).Zip(Sets(plates, bar, 2)).SelectMany(p => new[] { p.First, p.Second })]);
    }

    private PlateJob Job(PlatePairs[] plates, int bar, LoadBand[] sets) =>
        new() { Bar = Mass.Kg(bar), Plates = plates, Sets = sets, Room = 7, HeaviestInside = random.Next(2) == 0 };

    private PlatePairs[] Plates()
    {
        PlatePairs[] plates = [.. Discs.Select(d => new PlatePairs(Mass.Kg(d), random.Next(d < 2 ? 2 : 3)))];
        return plates.Sum(p => p.Pairs) > 2 ? plates : Plates();
    }

    /// <summary>A bare bar, three steps within 5 points, and working sets at a load of these plates.</summary>
    private LoadBand[] Sets(PlatePairs[] plates, int bar, int work)
    {
        var side = plates.SelectMany(p => Enumerable.Repeat(p.Mass.Amount, p.Pairs)).Where(_ => random.Next(2) == 0).Take(6).Sum();
        var (load, least) = (bar + (2 * side), LoadBand.Exactly(Mass.Kg(bar)));
        decimal[] shares = [0.4m + (0.05m * random.Next(4)), 0.6m + (0.05m * random.Next(4)), 0.8m + (0.05m * random.Next(3))];
        return
        [
            least,
            .. shares.Select(s => new LoadBand(Mass.Kg(load * s), Mass.Kg(load * (s - 0.05m)), Mass.Kg(load * (s + 0.05m)))).Select(b => OrNearest(b, plates, bar)),
            .. Enumerable.Repeat(LoadBand.Exactly(Mass.Kg(load)), work),
        ];
    }

    /// <summary>The band, or where it holds no load of these plates the nearest there is.</summary>
    private static LoadBand OrNearest(LoadBand band, PlatePairs[] plates, int bar)
    {
        var loads = plates.Aggregate((IEnumerable<decimal>)[bar], (sums, p) =>
            sums.SelectMany(s => Enumerable.Range(0, p.Pairs + 1).Select(n => s + (2 * n * p.Mass.Amount))).Distinct()).ToList();
        var near = Mass.Kg(loads.MinBy(l => Math.Abs(l - band.Ideal.Amount)));
        return loads.Any(l => l >= band.Low.Amount && l <= band.High.Amount) ? band : band with { Low = near, High = near };
    }

    private Mass[] Start(PlatePairs[] plates) =>
        [.. plates.SelectMany(p => Enumerable.Repeat(p.Mass, p.Pairs)).Where(_ => random.Next(3) == 0).Take(4)];
}
