using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>What every plan must keep to, reckoned from its stacks alone.</summary>
internal static class PlanChecks
{
    /// <summary>A plan's stacks keep to the job, and cost what the plan says they do.</summary>
    public static void Hold(PlateJob job, PlatePlan plan)
    {
        plan.Stacks.Should().HaveCount(job.Sets.Count);
        foreach (var (stack, band) in plan.Stacks.Zip(job.Sets))
        {
            Load(job, stack).Should().BeInRange(band.Low.Kilograms, band.High.Kilograms);
            stack.GroupBy(p => p).All(g => g.Count() <= job.Plates.Where(p => p.Mass == g.Key).Sum(p => p.Pairs)).Should().BeTrue();
            stack.Count.Should().BeLessThanOrEqualTo(job.Room ?? int.MaxValue);
            (Width(job, stack) > (job.Sleeve ?? decimal.MaxValue)).Should().BeFalse();
            if (job.HeaviestInside && job.Start.Count == 0)
            {
                stack.Should().BeInDescendingOrder();
            }
        }

        plan.Handled.Should().Be(Handled(job, plan.Stacks));
        plan.PlatesOn.Should().Be(plan.Stacks.Sum(s => s.Count));
        plan.DeviationKilograms.Should().Be(plan.Stacks.Zip(job.Sets).Sum(p => Math.Abs(Load(job, p.First) - p.Second.Ideal.Kilograms)));
    }

    /// <summary>The plates that change sides when these stacks follow each other: all outside the part that two have in common.</summary>
    public static int Handled(PlateJob job, IEnumerable<IReadOnlyList<Mass>> stacks)
    {
        List<IReadOnlyList<Mass>> all = [job.Start, .. stacks];
        if (job.StrippedAtEnd)
        {
            all.Add([]);
        }

        return all.Zip(all.Skip(1)).Sum(p => p.First.Count + p.Second.Count - (2 * p.First.Zip(p.Second).TakeWhile(q => q.First == q.Second).Count()));
    }

    /// <summary>The millimetres of a sleeve that a stack takes.</summary>
    public static decimal Width(PlateJob job, IReadOnlyList<Mass> stack) => stack.Sum(m => job.Plates.First(p => p.Mass == m).Thickness ?? 0);

    public static decimal Load(PlateJob job, IReadOnlyList<Mass> stack) => job.Bar.Kilograms + (2 * stack.Sum(p => p.Kilograms));
}
