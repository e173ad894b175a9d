using BenchmarkDotNet.Running;
using RackSide.Benchmarks;

if (args is ["plans"])
{
    PlanTimes.Print();
    return;
}

if (args is ["turns"])
{
    TurnTimes.Print();
    return;
}

if (args is ["accepted-set"])
{
    AcceptedSet.Print();
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
