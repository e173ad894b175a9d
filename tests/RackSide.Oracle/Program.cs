using System.Diagnostics;
using System.Globalization;
using RackSide.Oracle;
using RackSide.Training.Loading;

const int SecondsAJob = 10;

// RackSide's plans against CP-SAT on the same fresh jobs in the same run. Arguments: seed, ramps, rows of two lifters, and
// orders of two lifters.
var numbers = args.Select(a => int.Parse(a, CultureInfo.InvariantCulture)).ToList();
var (seed, ramps, pairs, orders) = numbers switch
{
    [var s, var r, var p, var o] => (s, r, p, o),
    [var s, var r, var p] => (s, r, p, 0),
    _ => (20261125, 300, 30, 30),
};
var jobs = new Jobs(seed);
var good = Compare("one lifter's ramp", [.. Enumerable.Range(0, ramps).Select(_ => jobs.Ramp())])
    & Compare("two lifters in turn", [.. Enumerable.Range(0, pairs).Select(_ => jobs.TwoOnOneBar())])
    & CompareOrders(new SharedBars(seed), orders);
return good ? 0 : 1;

bool CompareOrders(SharedBars bars, int count)
{
    var (equal, undecided) = (0, 0);
    for (var i = 0; i < count; i++)
    {
        var job = bars.Next();
        var (here, there) = (SharedBar.Order(job.Gym, job.One, job.Two)!.Plan.Handled, SharedBars.Least(job, SecondsAJob));
        (equal, undecided) = (equal + (here == there ? 1 : 0), undecided + (there is null ? 1 : 0));
        if (there is { } least && here != least)
        {
            Console.WriteLine($"DIFFERENT: an order that handles {here} plates here, {least} there: {job}");
        }
    }

    Console.WriteLine($"orders of two lifters: {count} jobs, {equal} as few plates as the best allowed order proved, {undecided} not decided, {count - equal - undecided} different");
    return equal + undecided == count;
}

bool Compare(string what, PlateJob[] all)
{
    if (all.Length == 0)
    {
        return true;
    }

    foreach (var job in all.Concat(all))
    {
        FewestPlates.For(job);
    }

    List<double> ours = [], theirs = [];
    var (equal, undecided, different) = (0, 0, 0);
    foreach (var job in all)
    {
        var plan = Timed(ours, () => FewestPlates.For(job))!;
        var proven = Timed(theirs, () => IntegerProgramme.Solve(job, SecondsAJob));
        var alike = proven == (plan.Handled, plan.PlatesOn, plan.DeviationKilograms);
        (equal, undecided, different) = (equal + (alike ? 1 : 0), undecided + (proven is null ? 1 : 0), different + (alike || proven is null ? 0 : 1));
        if (!alike && proven is { } other)
        {
            Console.WriteLine($"DIFFERENT: {plan.Handled} {plan.PlatesOn} {plan.DeviationKilograms} here, {other} there: {job}");
        }
    }

    Console.WriteLine($"{what}: {all.Length} jobs, {equal} equal in all three costs, {undecided} not decided in {SecondsAJob} s, {different} different");
    Console.WriteLine($"  here   {Spread(ours)}");
    Console.WriteLine($"  CP-SAT {Spread(theirs)}");
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  ratio of medians {Median(theirs) / Median(ours):0}, of totals {theirs.Sum() / ours.Sum():0}"));
    return different == 0;
}

static T Timed<T>(List<double> times, Func<T> solve)
{
    var began = Stopwatch.GetTimestamp();
    var result = solve();
    times.Add(Stopwatch.GetElapsedTime(began).TotalMilliseconds);
    return result;
}

static double Median(List<double> times) => times.Order().ElementAtOrDefault(times.Count / 2);

static string Spread(List<double> times) => string.Create(
    CultureInfo.InvariantCulture,
    $"median {Median(times):0.000} ms, 95 % under {times.Order().ElementAtOrDefault(times.Count * 95 / 100):0.000}, longest {times.DefaultIfEmpty().Max():0.000}");
