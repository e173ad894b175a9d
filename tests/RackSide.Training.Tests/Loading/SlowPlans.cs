using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>
/// The least cost by a shortest path (Dijkstra 1959, from memory) over what a person can do one after the other: put a
/// plate on, take the outermost off, do the set. It knows nothing of intervals and writes every order of plates out.
/// </summary>
internal static class SlowPlans
{
    /// <summary>The least cost, or null where a set cannot be made.</summary>
    public static (int Handled, int On, decimal Deviation)? Cost(PlateJob job)
    {
        var queue = new PriorityQueue<(int Done, IReadOnlyList<Mass> Stack), (int Handled, int On, decimal Deviation)>();
        var settled = new HashSet<string>();
        queue.Enqueue((0, job.Start), default);
        while (queue.TryDequeue(out var at, out var cost))
        {
            if (!settled.Add($"{at.Done}: {string.Join(' ', at.Stack)}"))
            {
                continue;
            }

            if (at.Done == job.Sets.Count && (at.Stack.Count == 0 || !job.StrippedAtEnd))
            {
                return cost;
            }

            foreach (var stack in Moves(job, at.Stack))
            {
                queue.Enqueue((at.Done, stack), cost with { Handled = cost.Handled + 1 });
            }

            if (at.Done < job.Sets.Count && PlanChecks.Load(job, at.Stack) is var load && Serves(job.Sets[at.Done], load))
            {
                queue.Enqueue(
                    (at.Done + 1, at.Stack),
                    (cost.Handled, cost.On + at.Stack.Count, cost.Deviation + Math.Abs(load - job.Sets[at.Done].Ideal.Kilograms)));
            }
        }

        return null;
    }

    private static bool Serves(LoadBand band, decimal load) => load >= band.Low.Kilograms && load <= band.High.Kilograms;

    private static IEnumerable<IReadOnlyList<Mass>> Moves(PlateJob job, IReadOnlyList<Mass> stack)
    {
        if (stack.Count > 0)
        {
            yield return [.. stack.SkipLast(1)];
        }

        foreach (var plate in job.Plates.Where(p => stack.Count(s => s == p.Mass) < p.Pairs).Select(p => p.Mass))
        {
            if (stack.Count < (job.Room ?? int.MaxValue) && !(PlanChecks.Width(job, [.. stack, plate]) > job.Sleeve) && !(job.HeaviestInside && stack.Count > 0 && plate > stack[^1]))
            {
                yield return [.. stack, plate];
            }
        }
    }
}
