using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Files;

/// <summary>Reads what the gym owns.</summary>
internal sealed class KitReader(Fields fields, MistakeList mistakes)
{
    private const string BarsRight = "list each bar with its name and mass, the one used by default first";
    private const string PlatesRight = "write the mass of a plate and how many pairs there are, such as 20 kg: 1";
    private static readonly Form<int> PairCount = YamlValues.Whole(0, 50, "1");

    private readonly MassUnit? unit = fields.Required("unit", YamlValues.Unit);

    /// <summary>The kit, or null where its unit is not known or it has no bar.</summary>
    public GymKit? Read()
    {
        var bars = Bars();
        var plates = Plates();
        var dumbbells = Masses("dumbbells");
        var stack = Masses("stack");
        var listed = new EquipmentReader(mistakes).Read(fields);
        return unit is null || bars.Count == 0 ? null : new GymKit
        {
            Unit = unit.Value,
            Bars = bars,
            Plates = plates,
            Dumbbells = dumbbells,
            Stack = stack,
            Equipment = new HashSet<string>([.. listed.Where(w => !EquipmentReader.IsImplied(w)), .. EquipmentReader.Implied(plates, dumbbells, stack)]),
        };
    }

    private List<Bar> Bars()
    {
        var written = fields.RequiredList("bars", BarsRight);
        if (written is { Count: 0 })
        {
            mistakes.Add(fields.LineOf("bars"), "bars", "the list is empty", BarsRight);
        }

        return [.. (written ?? []).Select(Bar).OfType<Bar>()];
    }

    private Bar? Bar(YamlValue written)
    {
        if (written is not YamlMap map)
        {
            mistakes.Add(written.Line, "bars", $"{written.Kind} stands where a bar should be", BarsRight);
            return null;
        }

        var bar = new Fields(map, mistakes);
        var name = bar.RequiredText("name", "write what the gym calls it");
        var mass = bar.Required("mass", YamlValues.Mass);
        bar.TellUnknown();
        return name is null || mass is null || !InUnit(mass.Value, bar.LineOf("mass"), "mass") ? null : new Bar(name, mass.Value);
    }

    private List<PlatePairs> Plates()
    {
        var plates = new List<PlatePairs>();
        foreach (var field in fields.RequiredMap("plates", PlatesRight)?.Fields ?? [])
        {
            if (YamlValues.Mass.Read(new YamlScalar(field.Line, field.Name), "plates", mistakes) is { } mass
                && InUnit(mass, field.Line, "plates") && Pairs(field) is { } pairs && Once(plates.Select(p => p.Mass), mass, field.Line, "plates"))
            {
                plates.Add(new PlatePairs(mass, pairs));
            }
        }

        return [.. plates.OrderByDescending(p => p.Mass)];
    }

    private int? Pairs(YamlField field)
    {
        if (field.Value is YamlScalar written)
        {
            return PairCount.Read(written, field.Name, mistakes);
        }

        mistakes.Add(field.Line, field.Name, $"{field.Value.Kind} stands where a number of pairs should be", PlatesRight);
        return null;
    }

    private List<Mass> Masses(string name)
    {
        var masses = new List<Mass>();
        var written = fields.OptionalList(name, "list masses, such as [2.5 kg, 5 kg]");
        foreach (var item in ListItems.Of(written, name, YamlValues.Mass, mistakes))
        {
            if (InUnit(item.Value, item.Line, name) && Once(masses, item.Value, item.Line, name))
            {
                masses.Add(item.Value);
            }
        }

        masses.Sort();
        return masses;
    }

    private bool InUnit(Mass mass, int line, string field)
    {
        if (unit is not { } own || mass.Unit == own)
        {
            return true;
        }

        mistakes.Add(line, field, $"{mass} is not in {own.Symbol()}, the unit of this gym",
            $"write {new Mass(Math.Round(mass.In(own), 1), own)}, or change unit");
        return false;
    }

    private bool Once(IEnumerable<Mass> before, Mass mass, int line, string field)
    {
        if (!before.Contains(mass))
        {
            return true;
        }

        mistakes.Add(line, field, $"{mass} is listed twice", "keep it once");
        return false;
    }
}
