using System.Diagnostics;
using System.Globalization;
using NodaTime;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Benchmarks;

/// <summary>How long the order of two lifters' sets takes, two whole ramps of four and five working sets each: <c>-- turns</c>.</summary>
internal static class TurnTimes
{
    private static readonly Duration Rest = Duration.FromMinutes(2);

    public static void Print()
    {
        foreach (var _ in Enumerable.Range(0, 20))
        {
            Jobs("home").ToList().ForEach(job => Order(job));
        }

        Console.WriteLine("gym        orders   first ms   median ms   longest ms");
        foreach (var gym in new[] { "home", "2 of each", "4 of each" })
        {
            var times = Jobs(gym).Select(Shortest).Order().ToList();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{gym,-10} {times.Count,6} {times[0],10:0.00} {times[times.Count / 2],11:0.00} {times[^1],12:0.00}"));
        }
    }

    public static IEnumerable<(PlateJob Gym, BarUser One, BarUser Two)> Jobs(string gym)
    {
        var loads = PlanTimes.Jobs(gym, left: false, 6).Select(j => (Plates: j.Plates, Work: j.Sets[^1].Ideal.Amount)).ToList();
        return from one in loads
               from two in loads
               select (Gym(one.Plates), User("one", one.Plates, one.Work), User("two", one.Plates, two.Work));
    }

    public static TurnOrder Order((PlateJob Gym, BarUser One, BarUser Two) job) => SharedBar.Order(job.Gym, job.One, job.Two)!;

    private static PlateJob Gym(IReadOnlyList<PlatePairs> plates) => new() { Bar = Mass.Kg(20), Plates = plates, Sets = [] };

    /// <summary>Loads as a session asks for them: those of the lifter's own ramp, each settled.</summary>
    private static BarUser User(string name, IReadOnlyList<PlatePairs> plates, decimal work)
    {
        LoadBand[] bands = [LoadBand.Exactly(Mass.Kg(20)), .. new[] { 0.5m, 0.7m, 0.85m }.Select(s => Band(work, s)), LoadBand.Exactly(Mass.Kg(work))];
        var ramp = FewestPlates.For(Gym(plates) with { Sets = bands })!;
        var sets = ramp.Stacks.Select(side => LoadBand.Exactly(Mass.Kg(20 + (2 * side.Sum(p => p.Amount))))).ToList();
        return new(name, [.. sets.Select((b, i) => new SharedSet(b, i < 4 ? Duration.Zero : Rest)), .. Enumerable.Repeat(new SharedSet(sets[^1], Rest), 4)]);
    }

    private static LoadBand Band(decimal work, decimal share) =>
        new(Mass.Kg(work * share), Mass.Kg(Math.Max(20, work * (share - 0.05m))), Mass.Kg(Math.Max(20, work * (share + 0.05m))));

    private static double Shortest((PlateJob Gym, BarUser One, BarUser Two) job) => Enumerable.Range(0, 5).Select(_ =>
    {
        var began = Stopwatch.GetTimestamp();
        Order(job);
        return Stopwatch.GetElapsedTime(began).TotalMilliseconds;
    }).Skip(1).Min();
}
