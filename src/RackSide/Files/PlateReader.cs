using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Files;

/// <summary>Reads plates: the mass of one, then how many pairs, or the pairs with the plate's thickness.</summary>
internal sealed class PlateReader(MistakeList mistakes)
{
    private const string PlatesRight = "write the mass of a plate and how many pairs there are, such as 20 kg: 1";
    private const string PairsRight = "write a number of pairs, or {pairs: 1, thickness: 27 mm}";
    private static readonly Form<int> PairCount = YamlValues.Whole(0, 50, "1");

    /// <summary>The plates, heaviest first; faulty ones are told and left out.</summary>
    public IReadOnlyList<PlatePairs> Read(Fields fields, string name, bool required)
    {
        var plates = new List<PlatePairs>();
        foreach (var field in (required ? fields.RequiredMap(name, PlatesRight) : fields.OptionalMap(name, PlatesRight))?.Fields ?? [])
        {
            if (YamlValues.Mass.Read(new YamlScalar(field.Line, field.Name), name, mistakes) is { } mass
                && Pairs(field, mass) is { } pairs && Once(plates, mass, field.Line, name))
            {
                plates.Add(pairs);
            }
        }

        return [.. plates.OrderByDescending(p => p.Mass)];
    }

    private PlatePairs? Pairs(YamlField field, Mass mass)
    {
        switch (field.Value)
        {
            case YamlScalar written:
                return PairCount.Read(written, field.Name, mistakes) is { } pairs ? new PlatePairs(mass, pairs) : null;
            case YamlMap map:
                var plate = new Fields(map, mistakes);
                var told = plate.Required("pairs", PairCount);
                var thickness = plate.Optional("thickness", Lengths.Form);
                plate.TellUnknown();
                return told is { } count ? new PlatePairs(mass, count) { Thickness = thickness } : null;
            default:
                mistakes.Add(field.Line, field.Name, $"{field.Value.Kind} stands where a number of pairs should be", PairsRight);
                return null;
        }
    }

    private bool Once(List<PlatePairs> before, Mass mass, int line, string name)
    {
        if (before.TrueForAll(p => p.Mass != mass))
        {
            return true;
        }

        mistakes.Add(line, name, $"{mass} is listed twice", "keep it once");
        return false;
    }
}
