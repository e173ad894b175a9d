using NodaTime;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Oracle;

/// <summary>
/// Two lifters who share a bar, with the order of their sets free: every order that the rule allows is written out here
/// anew and proved on its own, and the least of them is what the product must find.
/// </summary>
internal sealed class SharedBars(int seed)
{
    private static readonly decimal[] Discs = [20, 10, 5, 2.5m, 1.25m];

    private readonly Random random = new(seed);

    /// <summary>A small gym and up to four sets for each, some after a rest too long to go again; a third from a loaded bar.</summary>
    public (PlateJob Gym, BarUser One, BarUser Two) Next()
    {
        PlatePairs[] plates = [.. Discs.Select(d => new PlatePairs(Mass.Kg(d), random.Next(1, 3)))];
        var gym = new PlateJob
        {
            Bar = Mass.Kg(20),
            Plates = plates,
            Sets = [],
            Room = 6,
            Start = random.Next(3) == 0 ? [plates[1].Mass, plates[3].Mass] : [],
        };
        return (gym, User("one", plates), User("two", plates));
    }

    /// <summary>The fewest plates that any allowed order handles, proved; null where one was not decided in this time.</summary>
    public static int? Least((PlateJob Gym, BarUser One, BarUser Two) job, double secondsAnOrder)
    {
        BarUser[] both = [job.One, job.Two];
        List<int> proven = [];
        foreach (var order in Orders(both))
        {
            if (IntegerProgramme.Solve(job.Gym with { Sets = Bands(order, both) }, secondsAnOrder) is not { } cost)
            {
                return null;
            }

            proven.Add(cost.Handled);
        }

        return proven.Min();
    }

    private BarUser User(string name, PlatePairs[] plates)
    {
        decimal[] loads = [.. Enumerable.Range(0, random.Next(2, 5)).Select(_ => 20 + (2 * plates.Where(_ => random.Next(2) == 0).Sum(p => p.Mass.Amount))).Order()];
        return new(name, [.. loads.Select(l => new SharedSet(LoadBand.Exactly(Mass.Kg(l)), Duration.FromSeconds(random.Next(2) == 0 ? 0 : 120)))]);
    }

    private static IEnumerable<int[]> Orders(BarUser[] both)
    {
        var (ones, twos) = (both[0].Sets.Count, both[1].Sets.Count);
        return Enumerable.Range(0, 1 << (ones + twos))
            .Select(bits => Enumerable.Range(0, ones + twos).Select(i => (bits >> i) & 1).ToArray())
            .Where(order => order.Sum() == twos && Allowed(order, both));
    }

    /// <summary>Again while the other waits: only once, and only after a rest of at most a minute.</summary>
    private static bool Allowed(int[] order, BarUser[] both) => Enumerable.Range(1, order.Length - 1).All(i =>
        order[i] != order[i - 1]
        || !order.Skip(i).Contains(1 - order[i])
        || (!(i > 1 && order[i - 2] == order[i]) && both[order[i]].Sets[order.Take(i).Count(l => l == order[i])].RestBefore <= Duration.FromSeconds(60)));

    private static LoadBand[] Bands(int[] order, BarUser[] both) =>
        [.. order.Select((lifter, i) => both[lifter].Sets[order.Take(i).Count(l => l == lifter)].Band)];
}
