using RackSide.Simulation;

namespace RackSide.Benchmarks;

/// <summary>
/// Lifter-years a second of processor time, the quick way: the same lifters in several rounds, the best round told too because
/// other work on the machine only ever makes one slower.
/// </summary>
internal static class YearTimes
{
    private const int Rounds = 7, LiftersARound = 8;

    /// <summary>Prints a row for each gym: even seeds train in a garage, odd ones in a gym with plates for anybody.</summary>
    public static void Print()
    {
        foreach (var (gym, first) in new[] { ("garage", 2), ("plates for anybody", 1) })
        {
            Lives(first);
            var rounds = Enumerable.Range(0, Rounds).Select(_ => Lives(first)).Order().ToList();
            Console.WriteLine($"{gym,-20}{rounds[Rounds / 2],8:0.0} ms a year ({rounds[0]:0.0} at best){1000 / rounds[0],8:0.0} lifter-years a second at best, {Allocated(first) / 1e6:0} MB a year");
        }
    }

    private static long Allocated(int seed)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        new SimulatedYear(seed).Live(52);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static double Lives(int first)
    {
        var before = Environment.CpuUsage.TotalTime;
        for (var i = 0; i < LiftersARound; i++)
        {
            new SimulatedYear(first + (2 * i)).Live(52);
        }

        return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds / LiftersARound;
    }
}
