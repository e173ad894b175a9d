using System.Globalization;
using BenchmarkDotNet.Running;
using NodaTime.Text;
using RackSide.Benchmarks;

if (args is ["plans"])
{
    PlanTimes.Print();
    return;
}

if (args is ["years"])
{
    YearTimes.Print();
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

if (args is ["opening"])
{
    OpeningTimes.Print();
    return;
}

if (args is ["gym", var server, var lifters, var copies])
{
    GymYears.Print(server, int.Parse(lifters, CultureInfo.InvariantCulture), int.Parse(copies, CultureInfo.InvariantCulture));
    return;
}

if (args is ["fill", var folder, var years, var today])
{
    YearsOfLog.Fill(folder, int.Parse(years, CultureInfo.InvariantCulture), InstantPattern.General.Parse(today + "T12:00:00Z").Value);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(GymYears).Assembly).Run(args);
