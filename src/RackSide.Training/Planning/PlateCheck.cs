using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Planning;

/// <summary>Which plates to fetch before a session.</summary>
internal static class PlateCheck
{
    /// <summary>For one side: of each plate the most that any set of these prescriptions needs, heaviest first.</summary>
    public static IReadOnlyList<Mass> For(IReadOnlyList<Prescription> prescriptions, Catalogue catalogue, GymKit kit) =>
    [
        .. prescriptions
            .Where(p => catalogue.Find(p.Exercise)?.LoadType == LoadType.Barbell)
            .SelectMany(p => p.Ramp.Select(r => (Mass?)r.Load).Append(p.Load))
            .OfType<Mass>()
            .Distinct()
            .Select(load => BarLoading.StackFor(load, kit)?.Side ?? [])
            .SelectMany(side => side.GroupBy(plate => plate).Select(g => (Plate: g.Key, Count: g.Count())))
            .GroupBy(need => need.Plate, need => need.Count)
            .OrderByDescending(need => need.Key)
            .SelectMany(need => Enumerable.Repeat(need.Key, need.Max())),
    ];
}
