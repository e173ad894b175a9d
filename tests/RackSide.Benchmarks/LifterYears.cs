using BenchmarkDotNet.Attributes;
using RackSide.Simulation;

namespace RackSide.Benchmarks;

/// <summary>
/// What a year of one invented lifter costs: the plan of every day, and about 145 sessions folded into the history. One over
/// the mean is lifter-years a second on one core; the aim was a thousand.
/// </summary>
[MemoryDiagnoser]
public class LifterYears
{
    /// <summary>Even seeds train in a garage, odd ones in a gym with plates for anybody.</summary>
    [Params(2, 5)]
    public int Seed { get; set; }

    [Benchmark]
    public int Year() => new SimulatedYear(Seed).Live(52).History.Sessions.Count;
}
