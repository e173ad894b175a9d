using System.Globalization;
using RackSide.Training.Exercises;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using Xunit.Abstractions;

namespace RackSide.Simulation;

/// <summary>
/// Invented lifters train with the plan that comes with the program. What is asked of them is held against what their
/// bodies can do, which the rules do not know. RACKSIDE_BODIES=200 lives through 52 weeks with so many bodies; without it
/// there are a few and half a year, so that the tests stay quick.
/// </summary>
public class SimulationTests(ITestOutputHelper output)
{
    private static readonly int? Asked =
        int.TryParse(Environment.GetEnvironmentVariable("RACKSIDE_BODIES"), CultureInfo.InvariantCulture, out var asked) ? asked : null;

    private static readonly Lazy<IReadOnlyList<SimulatedYear>> Lives = new(() =>
        [.. Enumerable.Range(0, Asked ?? 8).AsParallel().AsOrdered().Select(seed => new SimulatedYear(seed).Live(Asked is null ? 26 : 52))]);

    /// <summary>A load is earned at five reps or more, so it is well under a maximum; a kit with coarse steps may ask for one step beyond.</summary>
    [Fact]
    public void No_load_runs_away_from_what_the_body_can_do() =>
        Each((life, exercise, loads, given) => given
            .Where(g => loads.Below(g.Asked.Load!.Value) is { } easier && (double)easier.Kilograms > g.Best * SimulatedBody.Share(exercise))
            .Select(g => $"{g.Date}: {g.Asked.Load} of {g.Asked.Exercise}, and the best day was {g.Best * SimulatedBody.Share(exercise):0.0} kg ({g.Asked.Why.Code})"));

    [Fact]
    public void Nobody_fails_a_load_more_than_three_times_running() =>
        Each((life, exercise, loads, given) => Runs(given, (before, after) => after.Missed && before.Missed && before.Asked.Load == after.Asked.Load)
            .Where(run => run.Count > 3 && !IsEasiest(run[0].Asked.Load!.Value, loads))
            .Select(run => $"{run[0].Date}: {run[0].Asked.Exercise} missed {run.Count} times at {run[0].Asked.Load}"));

    [Fact]
    public void Every_stall_resolves_or_moves_on() =>
        Each((life, exercise, loads, given) => Runs(given, (before, after) => before.Missed && after.Missed)
            .Where(run => run.Count > 12 && run.Any(g => !IsEasiest(g.Asked.Load!.Value, loads)))
            .Select(run => $"{run[0].Date}: {run[0].Asked.Exercise} missed {run.Count} times running, from {run[0].Asked.Load} to {run[^1].Asked.Load}"));

    /// <summary>Steps are small and holidays long, so half of the best day is what a year of squats must reach at the least.</summary>
    [Fact]
    public void Loads_do_not_stay_far_below_what_the_body_can_do() =>
        Each((life, exercise, loads, given) => exercise.Id == "back-squat" && given.Count > 40
            && given.Max(g => g.Asked.Load!.Value) is var most && most < loads.Heaviest && (double)most.Kilograms < 0.5 * given[^1].Best
                ? [$"at most {most} of {exercise.Id}, and the best day was {given[^1].Best:0.0} kg"]
                : []);

    [Fact]
    public void No_prescription_is_unloadable() =>
        Each((life, exercise, loads, given) => given.Where(g => !loads.Has(g.Asked.Load!.Value)).Select(g => $"{g.Date}: {g.Asked.Load}"));

    [Fact]
    public void The_same_seed_lives_the_same_life() =>
        new SimulatedYear(7).Live(8).All.Select(g => (g.Asked.Load, g.Asked.Why.Line)).Should()
            .Equal(new SimulatedYear(7).Live(8).All.Select(g => (g.Asked.Load, g.Asked.Why.Line)));

    [Fact]
    public void The_bodies_differ_and_some_stall()
    {
        var all = Lives.Value.SelectMany(l => l.All).ToList();
        output.WriteLine($"{Lives.Value.Count} bodies, {Lives.Value.Sum(l => l.History.Sessions.Count)} sessions");
        foreach (var code in all.GroupBy(g => g.Asked.Why.Code).OrderByDescending(g => g.Count()))
        {
            output.WriteLine($"{code.Count(),7} {code.Key}, such as {code.First().Asked.Exercise}: {code.First().Asked.Why.Line}");
        }

        all.Select(g => g.Asked.Why.Code).Should().Contain(["all-met", "one-rep-more", "top-of-range", "miss", "third-miss", "lay-off"]);
        Lives.Value.Select(l => l.Body.Best[Motion.Squat]).Should().OnlyHaveUniqueItems();
    }

    private delegate IEnumerable<string> Finding(SimulatedYear life, Exercise exercise, ReachableLoads loads, IReadOnlyList<Given> given);

    /// <summary>Looks at each loaded exercise in each slot of each life.</summary>
    private static void Each(Finding find)
    {
        var found = from life in Lives.Value
                    from given in life.All.Where(g => g.Asked.Load is not null).GroupBy(g => (g.Asked.Slot, g.Asked.Exercise))
                    let exercise = SimulatedYear.Exercises[given.Key.Exercise]
                    where exercise.LoadType != LoadType.Assisted
                    from finding in find(life, exercise, Loads.For(exercise, life.Kit)!, [.. given])
                    select $"{life.Body.Kilograms:0.0} kg: {finding}";
        string.Join('\n', found.Take(20)).Should().BeEmpty();
    }

    private static IEnumerable<List<Given>> Runs(IReadOnlyList<Given> given, Func<Given, Given, bool> goOn)
    {
        List<Given> run = [];
        foreach (var next in given)
        {
            if (run.Count > 0 && !goOn(run[^1], next))
            {
                yield return run;
                run = [];
            }

            run.Add(next);
        }

        yield return run;
    }

    private static bool IsEasiest(Mass load, ReachableLoads loads) => load == loads.Lightest;
}
