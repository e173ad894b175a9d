using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>
/// Every sum that finite plates can make on one sleeve, each with its best stack: the fewest plates, and among equally
/// few the one with the larger plates inside.
/// </summary>
/// <remarks>
/// Taking the largest plate that fits is wrong for a small set (80 on a 20 kg bar from one pair of 25 and two of 15 is
/// 15 + 15), so all sums are made. Plates are added one mass at a time, heaviest first, and of each sum only those stacks
/// are kept that are not both worse and wider than another: the work grows with the number of different sums, not with the
/// number of ways to pick plates. Nothing is lost, because adding the same lighter plates to two stacks of one sum never
/// changes which of the two is better, nor which is wider. Where no sleeve is told all are equally wide, and one is kept.
/// Sums are exact decimals in kilograms, so plates in pounds and kilograms never meet by rounding.
/// </remarks>
internal static class SideStacks
{
    /// <summary>The best stack that fits, inside to outside, by its mass in kilograms; the empty sleeve is among them.</summary>
    /// <param name="plates">The plates; a pair is one for this sleeve. Counts and masses of 0 or less add nothing.</param>
    /// <param name="most">Sums over this many kilograms are left out.</param>
    /// <param name="sleeve">The room in millimetres; null where it is not told.</param>
    public static IReadOnlyDictionary<decimal, IReadOnlyList<Mass>> Of(
        IEnumerable<PlatePairs> plates, decimal most = decimal.MaxValue, decimal? sleeve = null)
    {
        var ways = new Dictionary<decimal, List<Way>> { [0] = [new([], 0)] };
        foreach (var plate in plates.Where(p => p.Mass.Amount > 0).OrderByDescending(p => p.Mass))
        {
            var (mass, width) = (plate.Mass.Kilograms, sleeve is null ? 0 : plate.Thickness ?? 0);
            foreach (var (sum, inside) in ways.SelectMany(w => w.Value.Select(way => (w.Key, way))).ToList())
            {
                for (var more = 1; more <= plate.Pairs && sum + (more * mass) <= most && inside.Width + (more * width) <= (sleeve ?? 0); more++)
                {
                    Offer(ways, sum + (more * mass), inside, plate.Mass, more, inside.Width + (more * width));
                }
            }
        }

        return ways.ToDictionary(w => w.Key, w => Best(w.Value));
    }

    private static void Offer(Dictionary<decimal, List<Way>> ways, decimal total, Way inside, Mass plate, int more, decimal width)
    {
        if (!ways.TryGetValue(total, out var known))
        {
            ways[total] = known = [];
        }

        if (known.Exists(k => k.Stack.Count < inside.Stack.Count + more && k.Width <= width))
        {
            return;
        }

        var way = new Way([.. inside.Stack, .. Enumerable.Repeat(plate, more)], width);
        if (!known.Exists(k => k.Width <= way.Width && !IsBetter(way.Stack, k.Stack)))
        {
            known.RemoveAll(k => way.Width <= k.Width && !IsBetter(k.Stack, way.Stack));
            known.Add(way);
        }
    }

    private static IReadOnlyList<Mass> Best(List<Way> ways) => ways.Select(w => w.Stack).Aggregate((best, way) => IsBetter(way, best) ? way : best);

    private static bool IsBetter(IReadOnlyList<Mass> stack, IReadOnlyList<Mass> known) =>
        stack.Count < known.Count || (stack.Count == known.Count && HasLargerInside(stack, known));

    private static bool HasLargerInside(IReadOnlyList<Mass> stack, IReadOnlyList<Mass> known) =>
        stack.Zip(known, (a, b) => a.CompareTo(b)).FirstOrDefault(c => c != 0) > 0;

    private readonly record struct Way(IReadOnlyList<Mass> Stack, decimal Width);
}
