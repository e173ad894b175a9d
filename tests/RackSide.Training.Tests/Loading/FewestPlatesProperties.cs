using CsCheck;
using RackSide.Training.Exercises;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>Plans on random small gyms, against a shortest path and against what a person does who thinks set by set.</summary>
public class FewestPlatesProperties
{
    [Fact]
    public void The_random_jobs_are_a_fair_mix()
    {
        // So that the other properties here are not met by jobs that nothing can do.
        var jobs = SampleJobs.Small.Array[400].Single(_ => true, "0N0XIzNsQ0O2");

        jobs.Count(job => FewestPlates.For(job) is { Handled: > 0 }).Should().BeGreaterThan(200);
        jobs.Count(job => FewestPlates.For(job) is null).Should().BeGreaterThan(20);
        jobs.Count(job => job.Start.Count > 0).Should().BeGreaterThan(100);
    }

    [Fact]
    public void No_order_of_putting_on_and_taking_off_is_cheaper() =>
        SampleJobs.Small.Sample(
            job =>
            {
                var plan = FewestPlates.For(job);
                (plan is null ? default((int, int, decimal)?) : (plan.Handled, plan.PlatesOn, plan.DeviationKilograms)).Should().Be(SlowPlans.Cost(job));
            },
            iter: 400);

    [Fact]
    public void No_order_that_fits_on_a_short_sleeve_is_cheaper() =>
        SampleJobs.Narrow.Sample(
            job =>
            {
                var plan = FewestPlates.For(job);
                (plan is null ? default((int, int, decimal)?) : (plan.Handled, plan.PlatesOn, plan.DeviationKilograms)).Should().Be(SlowPlans.Cost(job));
                if (plan is not null)
                {
                    PlanChecks.Hold(job, plan);
                }
            },
            iter: 400);

    [Fact]
    public void A_plan_keeps_to_the_job_and_costs_what_it_says() =>
        SampleJobs.Small.Sample(
            job =>
            {
                if (FewestPlates.For(job) is { } plan)
                {
                    PlanChecks.Hold(job, plan);
                }
            },
            iter: 2000);

    [Fact]
    public void A_plan_never_handles_more_than_loading_set_by_set() =>
        SampleJobs.Small.Where(job => job.HeaviestInside).Sample(
            job =>
            {
                if (SetBySet(job) is { } stacks)
                {
                    FewestPlates.For(job)!.Handled.Should().BeLessThanOrEqualTo(PlanChecks.Handled(job, stacks));
                }
            },
            iter: 2000);

    [Fact]
    public void Doing_as_told_from_set_to_set_gives_exactly_the_stacks_and_loads() =>
        SampleJobs.Small.Sample(
            job =>
            {
                var bar = new Training.Kit.Bar("the bar", job.Bar);
                var sleeve = new Stack<Mass>(job.Start);
                foreach (var stack in FewestPlates.For(job)?.Stacks ?? [])
                {
                    var to = new BarStack(bar, stack);
                    PlateChangeTests.Do(sleeve, PlateChange.Between(new BarStack(bar, [.. sleeve.Reverse()]), to));
                    sleeve.Reverse().Should().Equal(stack);
                    to.Total.Kilograms.Should().Be(job.Bar.Kilograms + (2 * sleeve.Sum(p => p.Kilograms)));
                }
            },
            iter: 500);

    [Fact]
    public void A_set_done_over_again_changes_no_plate() =>
        SampleJobs.Small.Sample(
            job =>
            {
                var twice = job with { Sets = [.. job.Sets, job.Sets[^1]] };
                FewestPlates.For(twice)?.Stacks[^1].Should().Equal(FewestPlates.For(twice)!.Stacks[^2]);
                FewestPlates.For(twice)?.Handled.Should().Be(FewestPlates.For(job)!.Handled);
            },
            iter: 500);

    /// <summary>Each set alone: of the loads within its band the one with the fewest plates, heaviest inside.</summary>
    private static IReadOnlyList<IReadOnlyList<Mass>>? SetBySet(PlateJob job)
    {
        var kit = SampleKits.Kilograms(0) with { Bars = [new("the bar", job.Bar)], Plates = job.Plates };
        var all = Loads.For(SampleKits.Loaded(LoadType.Barbell), kit)!.All;
        var stacks = job.Sets.Select(set => all
            .Where(load => load >= set.Low && load <= set.High)
            .Select(load => BarLoading.StackFor(load, kit)!.Side)
            .MinBy(side => side.Count)).ToList();
        return stacks.Contains(null) ? null : [.. stacks.OfType<IReadOnlyList<Mass>>()];
    }
}
