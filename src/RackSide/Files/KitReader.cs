using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Files;

/// <summary>Reads what the gym owns.</summary>
internal sealed class KitReader(Fields fields, MistakeList mistakes)
{
    private const string MassesRight = "list masses, such as [2.5 kg, 5 kg]";
    private const int MostAddOns = 8;

    private readonly MassUnit? unit = fields.Required("unit", YamlValues.Unit);
    private readonly BarReader barReader = new(mistakes);
    private readonly PlateReader plateReader = new(mistakes);

    /// <summary>The kit, or null where its unit is not known or it has no bar.</summary>
    public GymKit? Read()
    {
        var bars = barReader.Read(fields);
        var plates = plateReader.Read(fields, "plates", required: true);
        var dumbbells = Masses(fields, "dumbbells");
        var handles = Maps("handles", "list each kind of handle with its name, mass and count").Select(Handle).OfType<Handle>().ToList();
        var (stack, addOns) = (Masses(fields, "stack"), AddOns(fields, "stack_add_ons"));
        var machines = Maps("machines", "list each machine with its name and stack").Select(Machine).OfType<Machine>().ToList();
        var bands = Maps("bands", "list each band with its name").Select(Band).OfType<Band>().ToList();
        var (belted, belt) = Belt();
        var listed = new EquipmentReader(mistakes).Read(fields);
        return unit is null || bars.Count == 0 ? null : new GymKit
        {
            Unit = unit.Value,
            Bars = bars,
            Plates = plates,
            Dumbbells = dumbbells,
            Handles = handles,
            Stack = stack,
            StackAddOns = addOns,
            Machines = machines,
            Bands = bands,
            Belt = belted ? belt : new Belt(null),
            Equipment = new HashSet<string>([.. listed.Where(w => !EquipmentReader.IsImplied(w)), .. EquipmentReader.Implied(plates, dumbbells, handles, stack, machines, bands)]),
        };
    }

    private IEnumerable<Fields> Maps(string name, string right)
    {
        foreach (var item in fields.OptionalList(name, right) ?? [])
        {
            if (item is YamlMap map)
            {
                yield return new Fields(map, mistakes);
            }
            else
            {
                mistakes.Add(item.Line, name, $"{item.Kind} stands where a set of fields should be", right);
            }
        }
    }

    private Handle? Handle(Fields handle)
    {
        var name = handle.RequiredText("name", "write what the gym calls it");
        var mass = handle.Required("mass", YamlValues.Mass);
        var count = handle.Required("count", YamlValues.Whole(1, 50, "2"));
        var sleeve = handle.Optional("sleeve", Lengths.Form);
        var plates = handle.Has("plates") ? plateReader.Read(handle, "plates", required: false) : null;
        handle.Know("plates");
        handle.TellUnknown();
        return name is null || mass is null || count is null ? null
            : new Handle(new Bar(name, mass.Value) { Sleeve = sleeve }, count.Value) { Plates = plates };
    }

    private Machine? Machine(Fields machine)
    {
        var name = machine.RequiredText("name", $"write {WordForm.OneOf(EquipmentReader.Machines)}");
        var known = name is not null && EquipmentReader.Machines.Contains(name);
        if (name is not null && !known)
        {
            mistakes.Add(machine.LineOf("name"), "name", $"no exercise asks for a machine \"{name}\"", $"write {WordForm.OneOf(EquipmentReader.Machines)}");
        }

        var stack = Masses(machine, "stack");
        var addOns = AddOns(machine, "add_ons");
        if (stack.Count == 0)
        {
            mistakes.Add(machine.LineOf("stack"), "stack", "no position is listed", MassesRight);
        }

        machine.TellUnknown();
        return known ? new Machine(name!, stack, addOns) : null;
    }

    private Band? Band(Fields band)
    {
        var name = band.RequiredText("name", "write what the gym calls it");
        var help = band.Optional("help", YamlValues.Mass);
        band.TellUnknown();
        return name is null ? null : new Band(name, help);
    }

    private (bool Told, Belt? Belt) Belt()
    {
        const string name = "belt", right = "write yes, no, or the belt's own mass where it is to count, such as 0.8 kg";
        return fields.OptionalText(name, right) switch
        {
            null or "yes" => (false, null),
            "no" => (true, null),
            var text when YamlValues.Mass.Parse(text) is { } mass && YamlValues.Mass.Plausible(mass) => (true, new Belt(mass)),
            var text => Wrong(text),
        };

        (bool, Belt?) Wrong(string text)
        {
            mistakes.Add(fields.LineOf(name), name, $"\"{text}\" is no belt", right);
            return (false, null);
        }
    }

    private List<Mass> Masses(Fields from, string name)
    {
        var masses = new List<Mass>();
        foreach (var item in ListItems.Of(from.OptionalList(name, MassesRight), name, YamlValues.Mass, mistakes))
        {
            if (masses.Contains(item.Value))
            {
                mistakes.Add(item.Line, name, $"{item.Value} is listed twice", "keep it once");
            }
            else
            {
                masses.Add(item.Value);
            }
        }

        masses.Sort();
        return masses;
    }

    /// <summary>Here a mass may be listed twice, because there may be two such plates.</summary>
    private List<Mass> AddOns(Fields from, string name)
    {
        var masses = ListItems.Of(from.OptionalList(name, MassesRight), name, YamlValues.Mass, mistakes).Select(i => i.Value).Order().ToList();
        if (masses.Count > MostAddOns)
        {
            mistakes.Add(from.LineOf(name), name, $"{masses.Count} plates are laid on one stack", $"list at most {MostAddOns}");
        }

        return masses;
    }
}
