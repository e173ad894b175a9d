using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>Finds what else could go on a sleeve with as few plates, to say why it does not.</summary>
internal static class AsFewPlates
{
    /// <summary>The next best other stack of the same mass and number of plates, heaviest inside; null where there is none.</summary>
    public static IReadOnlyList<Mass>? OtherThan(BarStack stack, GymKit kit) =>
        Ways([.. kit.Plates.Where(p => p.Pairs > 0 && p.Mass.Amount > 0).OrderByDescending(p => p.Mass)], stack.Side.Sum(p => p.Kilograms), stack.Side.Count)
            .FirstOrDefault(way => !way.SequenceEqual(stack.Side) && Fits(way, stack.Bar, kit));

    private static bool Fits(IEnumerable<Mass> way, Bar bar, GymKit kit) =>
        !(way.Sum(m => kit.Plates.FirstOrDefault(p => p.Mass == m)?.Thickness ?? 0) > bar.Sleeve);

    /// <summary>All ways, those with the larger plates inside first.</summary>
    private static IEnumerable<IReadOnlyList<Mass>> Ways(PlatePairs[] plates, decimal kilograms, int count)
    {
        if (count == 0)
        {
            return kilograms == 0 ? [[]] : [];
        }

        return plates.Length == 0 || kilograms > count * plates[0].Mass.Kilograms || kilograms < count * plates[^1].Mass.Kilograms
            ? []
            : With(plates, kilograms, count);
    }

    private static IEnumerable<IReadOnlyList<Mass>> With(PlatePairs[] plates, decimal kilograms, int count)
    {
        var (mass, pairs) = plates[0];
        return
            from n in Enumerable.Range(0, Math.Min(pairs, count) + 1).Reverse()
            from rest in Ways(plates[1..], kilograms - (n * mass.Kilograms), count - n)
            select (IReadOnlyList<Mass>)[.. Enumerable.Repeat(mass, n), .. rest];
    }
}
