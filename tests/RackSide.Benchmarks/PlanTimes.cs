using System.Diagnostics;
using System.Globalization;
using RackSide.Tollbooth;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Benchmarks;

/// <summary>
/// How long single plans take, the hardest among them too, which a mean does not show: <c>-- plans</c>. Each job is planned
/// seven times after warming up and the shortest time counts, so that what else the machine does is left out.
/// </summary>
internal static class PlanTimes
{
    private static readonly decimal[] Discs = [25, 20, 15, 10, 5, 2.5m, 1.25m, 0.5m];

    /// <summary>Working loads from 30 kg to what the gym (or 220 kg) allows.</summary>
    public static IEnumerable<PlateJob> Jobs(string gym, bool left, int count)
    {
        var plates = Plates(gym);
        var heaviest = Math.Min(20 + (2 * plates.Sum(p => p.Mass.Amount * p.Pairs)), 220);
        return Enumerable.Range(1, count).Select(i => Job(plates, 30 + (Math.Floor((heaviest - 30) / 2.5m * i / count) * 2.5m)) with
        {
            Start = left ? [plates[1].Mass, plates[3].Mass] : [],
        });
    }

    public static void Print()
    {
        foreach (var job in Enumerable.Repeat(Jobs("home", true, 64), 60).SelectMany(jobs => jobs))
        {
            FewestPlates.For(job);
        }

        Console.WriteLine("gym        order            start   median ms   95 % ms   longest ms");
        foreach (var gym in new[] { "home", "2 of each", "3 of each", "4 of each" })
        {
            foreach (var (inside, left) in new[] { (true, false), (true, true), (false, false), (false, true) })
            {
                var times = Jobs(gym, left, 64).Select(job => Shortest(job with { HeaviestInside = inside })).Order().ToList();
                Console.WriteLine(string.Create(
                    CultureInfo.InvariantCulture,
                    $"{gym,-10} {(inside ? "heaviest inside" : "any order"),-16} {(left ? "loaded" : "bare"),-7} {times[32],9:0.000} {times[60],9:0.000} {times[^1],12:0.000}"));
            }

            var whole = Jobs(gym, false, 64).Select(job => Shortest(WithTwoMore(job))).Order().ToList();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{gym,-10} {"and two lifts more",-18} {"bare",-5} {whole[32],9:0.000} {whole[60],9:0.000} {whole[^1],12:0.000}"));
            var narrow = Jobs(gym, false, 64).Select(job => Shortest(job with { Sleeve = 150, Plates = [.. job.Plates.Select(p => p with { Thickness = 10 + Math.Floor(p.Mass.Amount) })] })).Order().ToList();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{gym,-10} {"150 mm sleeve",-16} {"bare",-7} {narrow[32],9:0.000} {narrow[60],9:0.000} {narrow[^1],12:0.000}"));
        }

        PrintTables();
    }

    private static double Shortest(PlateJob job) => Shortest(() => FewestPlates.For(job));

    private static double Shortest(Action work) => Enumerable.Range(0, 10).Select(_ =>
    {
        var began = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(began).TotalMilliseconds;
    }).Skip(3).Min();

    /// <summary>What the loads of a gym cost to list, and a ramp that lists them itself, against one that has them.</summary>
    private static void PrintTables()
    {
        var squat = TollboothDay.Catalogue["back-squat"];
        Console.WriteLine("gym        loads of a gym ms   ramp with its own ms   row of five sets, loads at hand ms");
        foreach (var gym in new[] { "home", "2 of each", "3 of each", "4 of each" })
        {
            var kit = KitDefaults.For(MassUnit.Kilogram) with { Plates = Plates(gym) };
            var (loads, kept) = (Loads.For(squat, kit)!, new KitLoads(kit));
            var work = loads.AtOrBelow(Mass.Kg(100));
            kept.StackFor(work, squat);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{gym,-10} {Shortest(() => Loads.For(squat, kit)),17:0.000} {Shortest(() => Ramps.For(RampKind.Full, work, squat, loads, kit)),22:0.000} {Shortest(() => kept.Row([.. Enumerable.Repeat(new BarSet(work, squat), 5)], null)),35:0.000}"));
        }
    }

    private static IReadOnlyList<PlatePairs> Plates(string gym) => gym == "home"
        ? KitDefaults.For(MassUnit.Kilogram).Plates
        : [.. Discs.Select(d => new PlatePairs(Mass.Kg(d), int.Parse(gym[..1], CultureInfo.InvariantCulture)))];

    /// <summary>Two lifts after it with the bar left loaded, at about 60 and 40 % of its load, with two warm-up sets and three working sets each.</summary>
    private static PlateJob WithTwoMore(PlateJob job)
    {
        var work = job.Sets[^1].Ideal.Amount;
        return job with { Sets = [.. job.Sets, .. Lift(work, 0.6m), .. Lift(work, 0.4m)] };
    }

    private static IEnumerable<LoadBand> Lift(decimal first, decimal share) =>
        new[] { 0.5m, 0.75m, 1, 1, 1 }.Select(part => LoadBand.Exactly(Mass.Kg(20 + (Math.Floor(Math.Max((first * share) - 20, 0) * part / 5) * 5))));

    /// <summary>The bare bar, 50, 70 and 85 % within 5 points, and five working sets.</summary>
    private static PlateJob Job(IReadOnlyList<PlatePairs> plates, decimal work) => new()
    {
        Bar = Mass.Kg(20),
        Plates = plates,
        Sets =
        [
            LoadBand.Exactly(Mass.Kg(20)),
            .. new[] { 0.5m, 0.7m, 0.85m }.Where(share => work * (share - 0.05m) > 20)
                .Select(share => new LoadBand(Mass.Kg(work * share), Mass.Kg(work * (share - 0.05m)), Mass.Kg(work * (share + 0.05m)))),
            .. Enumerable.Repeat(LoadBand.Exactly(Mass.Kg(work)), 5),
        ],
    };
}
