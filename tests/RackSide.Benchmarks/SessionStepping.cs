using BenchmarkDotNet.Attributes;
using NodaTime;
using RackSide.Pages;
using RackSide.Pages.Rack;
using RackSide.Tollbooth;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Sessions;

namespace RackSide.Benchmarks;

/// <summary>What a tick, a key and a page cost in mid rest, and what a ramp with its plates costs once a slot.</summary>
[MemoryDiagnoser]
public class SessionStepping
{
    private static readonly PageSize Size = new(80, 24);
    private Session resting = null!;
    private Session lifting = null!;
    private ReachableLoads loads = null!;

    [GlobalSetup]
    public void Prepare()
    {
        var rack = Tollbooth.Rack.Strength(TollboothDay.SquatOnMonday(65, 5, 5, 5, 5, 5)).To(i => i is WorkItem).RestOut();
        lifting = rack.Wait(30).Session;
        resting = rack.Lift().Wait(13).Session;
        loads = Loads.For(TollboothDay.Catalogue["back-squat"], TollboothDay.Kit)!;
    }

    [Benchmark(Baseline = true)]
    public Turn Tick() => SessionSteps.Step(resting, new Ticked(resting.Now + Duration.FromMilliseconds(100)));

    [Benchmark]
    public Turn AcceptASet() => SessionSteps.Step(lifting, new Accepted(lifting.Now + Duration.FromSeconds(1)));

    [Benchmark]
    public Page DrawTheRest() => SessionPages.Draw(resting, null, Size, resting.Now);

    [Benchmark]
    public Page DrawTheLift() => SessionPages.Draw(lifting, null, Size, lifting.Now);

    [Benchmark]
    public ReachableLoads AllLoadsOfAHomeKit() => Loads.For(TollboothDay.Catalogue["back-squat"], TollboothDay.Kit)!;

    [Benchmark]
    public IReadOnlyList<RampSet> Ramp() =>
        Ramps.For(RampKind.Full, Mass.Kg(67.5m), TollboothDay.Catalogue["back-squat"], loads, TollboothDay.Kit);
}
