using BenchmarkDotNet.Attributes;
using RackSide.Training.Loading;

namespace RackSide.Benchmarks;

/// <summary>
/// What it costs to plan a ramp and its working sets: 64 working loads of one gym a call, so that a hard one counts with
/// the easy ones. Numbers are for one plan.
/// </summary>
[MemoryDiagnoser]
public class PlatePlanning
{
    private const int Plans = 64;
    private PlateJob[] jobs = [];

    /// <summary>The default home set, or so many pairs of each of eight kinds of plates.</summary>
    [Params("home", "2 of each", "3 of each", "4 of each")]
    public string Gym { get; set; } = "home";

    /// <summary>Whether the plates of the exercise before are still on.</summary>
    [Params(false, true)]
    public bool Left { get; set; }

    [GlobalSetup]
    public void Prepare() => jobs = [.. PlanTimes.Jobs(Gym, Left, Plans)];

    [Benchmark(OperationsPerInvoke = Plans)]
    public int HeaviestInside() => jobs.Sum(job => FewestPlates.For(job)!.Handled);

    [Benchmark(OperationsPerInvoke = Plans)]
    public int AnyOrder() => jobs.Sum(job => FewestPlates.For(job with { HeaviestInside = false })!.Handled);
}
