using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Planning;

/// <summary>Which plates to fetch before a session.</summary>
internal static class PlateCheck
{
    /// <summary>For one side: of each plate the most that any set of these prescriptions needs, heaviest first.</summary>
    public static IReadOnlyList<Mass> For(IReadOnlyList<Prescription> prescriptions, Catalogue catalogue, KitLoads loads) =>
    [
        .. Stacks(prescriptions, catalogue, loads)
            .SelectMany(stack => stack.Side.GroupBy(plate => plate).Select(g => (Plate: g.Key, Count: g.Count())))
            .GroupBy(need => need.Plate, need => need.Count)
            .OrderByDescending(need => need.Key)
            .SelectMany(need => Enumerable.Repeat(need.Key, need.Max())),
    ];

    /// <summary>As the session plans them: each row as far as the bar goes with its plates on.</summary>
    private static IEnumerable<BarStack> Stacks(IReadOnlyList<Prescription> prescriptions, Catalogue catalogue, KitLoads loads)
    {
        List<BarSet> sets = [.. prescriptions.SelectMany(asked => BarOrder.Sets(asked, catalogue.Find(asked.Exercise)))];
        BarStack? onBar = null;
        while (sets.Count > 0)
        {
            var row = loads.Row(sets, onBar);
            foreach (var stack in row)
            {
                yield return onBar = stack;
            }

            sets = sets[Math.Max(1, row.Count)..];
        }
    }
}
