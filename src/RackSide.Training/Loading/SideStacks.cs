using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>
/// Every sum that finite plates can make on one sleeve, each with its best stack: the fewest plates, and among equally
/// few the one with the larger plates inside.
/// </summary>
/// <remarks>
/// Taking the largest plate that fits is wrong for a small set (80 on a 20 kg bar from one pair of 25 and two of 15 is
/// 15 + 15), so all sums are made. Plates are added one mass at a time, heaviest first, and only the best stack of each
/// sum is kept: the work grows with the number of different sums, not with the number of ways to pick plates. Nothing is
/// lost, because adding the same lighter plates to two stacks of one sum never changes which of the two is better.
/// Sums are exact decimals in kilograms, so plates in pounds and kilograms never meet by rounding.
/// </remarks>
internal static class SideStacks
{
    /// <summary>The best stack, inside to outside, by its mass in kilograms; the empty sleeve is among them.</summary>
    /// <param name="plates">The masses and how many of each one sleeve can take. Counts and masses of 0 or less add nothing.</param>
    /// <param name="most">Sums over this many kilograms are left out.</param>
    public static IReadOnlyDictionary<decimal, IReadOnlyList<Mass>> Of(IEnumerable<(Mass Plate, int Count)> plates, decimal most)
    {
        var best = new Dictionary<decimal, IReadOnlyList<Mass>> { [0] = [] };
        foreach (var (plate, count) in plates.Where(p => p.Plate.Amount > 0).OrderByDescending(p => p.Plate))
        {
            foreach (var (sum, inside) in best.ToList())
            {
                for (var more = 1; more <= count && sum + (more * plate.Kilograms) <= most; more++)
                {
                    Offer(best, sum + (more * plate.Kilograms), inside, plate, more);
                }
            }
        }

        return best;
    }

    /// <summary>The best stacks of one sleeve from a kit's pairs.</summary>
    public static IReadOnlyDictionary<decimal, IReadOnlyList<Mass>> Of(GymKit kit) =>
        Of(kit.Plates.Select(p => (p.Mass, p.Pairs)), decimal.MaxValue);

    private static void Offer(
        Dictionary<decimal, IReadOnlyList<Mass>> best, decimal total, IReadOnlyList<Mass> inside, Mass plate, int more)
    {
        var known = best.GetValueOrDefault(total);
        if (known?.Count < inside.Count + more)
        {
            return;
        }

        IReadOnlyList<Mass> stack = [.. inside, .. Enumerable.Repeat(plate, more)];
        if (known is null || stack.Count < known.Count || HasLargerInside(stack, known))
        {
            best[total] = stack;
        }
    }

    private static bool HasLargerInside(IReadOnlyList<Mass> stack, IReadOnlyList<Mass> known) =>
        stack.Zip(known, (a, b) => a.CompareTo(b)).FirstOrDefault(c => c != 0) > 0;
}
