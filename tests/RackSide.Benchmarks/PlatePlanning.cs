using BenchmarkDotNet.Attributes;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Benchmarks;

/// <summary>
/// What it costs to plan a ramp and its working sets: 64 working loads of one gym a call, so that a hard one counts with
/// the easy ones. Numbers are for one plan.
/// </summary>
[MemoryDiagnoser]
public class PlatePlanning
{
    private const int Plans = 64;

    private static readonly decimal[] Discs = [25, 20, 15, 10, 5, 2.5m, 1.25m, 0.5m];
    private PlateJob[] jobs = [];

    /// <summary>The default home set, or so many pairs of each of eight kinds of plates.</summary>
    [Params("home", "2 of each", "3 of each", "4 of each")]
    public string Gym { get; set; } = "home";

    /// <summary>Whether the plates of the exercise before are still on.</summary>
    [Params(false, true)]
    public bool Left { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        var plates = Gym == "home"
            ? KitDefaults.For(MassUnit.Kilogram).Plates
            : [.. Discs.Select(d => new PlatePairs(Mass.Kg(d), int.Parse(Gym[..1], null)))];
        var heaviest = Math.Min(20 + (2 * plates.Sum(p => p.Mass.Amount * p.Pairs)), 220);
        jobs = [.. Enumerable.Range(1, Plans).Select(i => Job(plates, 30 + (Math.Floor((heaviest - 30) / 2.5m * i / Plans) * 2.5m)))];
    }

    [Benchmark(OperationsPerInvoke = Plans)]
    public int HeaviestInside() => jobs.Sum(job => FewestPlates.For(job)!.Handled);

    [Benchmark(OperationsPerInvoke = Plans)]
    public int AnyOrder() => jobs.Sum(job => FewestPlates.For(job with { HeaviestInside = false })!.Handled);

    /// <summary>The bare bar, 50, 70 and 85 % within 5 points, and five working sets.</summary>
    private PlateJob Job(IReadOnlyList<PlatePairs> plates, decimal work) => new()
    {
        Bar = Mass.Kg(20),
        Plates = plates,
        Start = Left ? [plates[1].Mass, plates[3].Mass] : [],
        Sets =
        [
            LoadBand.Exactly(Mass.Kg(20)),
            .. new[] { 0.5m, 0.7m, 0.85m }.Where(share => work * (share - 0.05m) > 20)
                .Select(share => new LoadBand(Mass.Kg(work * share), Mass.Kg(work * (share - 0.05m)), Mass.Kg(work * (share + 0.05m)))),
            .. Enumerable.Repeat(LoadBand.Exactly(Mass.Kg(work)), 5),
        ],
    };
}
