using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Files;

/// <summary>An entry of a field as its lines in the file.</summary>
/// <param name="Key">What tells it from the other entries of its field.</param>
/// <param name="Lines">Its lines, as the file of a new gym has them.</param>
internal sealed record KitEntry(string Key, IReadOnlyList<string> Lines);

/// <summary>A field of the house rules that is part of the kit.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Entries">Its entries; null for a field of one line.</param>
/// <param name="Line">The whole field on one line, where it can stand on one.</param>
/// <param name="Take">A kit with this field of another.</param>
internal sealed record KitField(
    string Name, Func<GymKit, IReadOnlyList<KitEntry>>? Entries, Func<GymKit, string?> Line, Func<GymKit, GymKit, GymKit> Take)
{
    /// <summary>All fields of the kit that a screen can change.</summary>
    public static IReadOnlyList<KitField> All { get; } =
    [
        new("bars", k => Each(k.Bars, b => b.Name, GymText.Bar), _ => null, (to, from) => to with { Bars = from.Bars }),
        new("plates", k => Each(k.Plates, p => Exactly(p.Mass), p => [$"  {GymText.Plate(p)}"]), k => k.Plates.Count == 0 ? "plates: {}" : null, (to, from) => to with { Plates = from.Plates }),
        new("dumbbells", k => Masses(k.Dumbbells), k => $"dumbbells: {GymText.Flow(k.Dumbbells)}", (to, from) => to with { Dumbbells = from.Dumbbells }),
        new("handles", k => Each(k.Handles, h => h.Bar.Name, GymText.Handle), k => k.Handles.Count == 0 ? "handles: []" : null, (to, from) => to with { Handles = from.Handles }),
        new("stack", k => Masses(k.Stack), k => $"stack: {GymText.Flow(k.Stack)}", (to, from) => to with { Stack = from.Stack }),
        new("stack_add_ons", k => Masses(k.StackAddOns), k => $"stack_add_ons: {GymText.Flow(k.StackAddOns)}", (to, from) => to with { StackAddOns = from.StackAddOns }),
        new("machines", k => Each(k.Machines, m => m.Name, GymText.Machine), k => k.Machines.Count == 0 ? "machines: []" : null, (to, from) => to with { Machines = from.Machines }),
        new("bands", k => Each(k.Bands, b => b.Name, GymText.Band), k => k.Bands.Count == 0 ? "bands: []" : null, (to, from) => to with { Bands = from.Bands }),
        new("belt", null, k => GymText.Belt(k.Belt), (to, from) => to with { Belt = from.Belt }),
        new("equipment", k => Each(GymText.Words(k), w => w, w => [$"  - {w}"]), k => GymText.Words(k).Count == 0 ? "equipment: []" : null, (to, from) => to with { Equipment = from.Equipment }),
    ];

    /// <summary>Whether two kits are alike in this field.</summary>
    public bool IsSame(GymKit one, GymKit other) => Line(one) == Line(other)
        && (Entries is null || Entries(one).SelectMany(e => e.Lines).SequenceEqual(Entries(other).SelectMany(e => e.Lines)));

    /// <summary>The whole field as a new gym has it.</summary>
    public IReadOnlyList<string> Whole(GymKit kit) => Line(kit) is { } line ? [line] : [$"{Name}:", .. Entries!(kit).SelectMany(e => e.Lines)];

    /// <summary>A mass as a key: kilograms and pounds are never the same, and 10 and 10.0 are.</summary>
    public static string Exactly(Mass mass) => GymText.Exact(mass);

    private static IReadOnlyList<KitEntry> Masses(IReadOnlyList<Mass> masses) => Each(masses, Exactly, m => [$"  - {Exactly(m)}"]);

    private static IReadOnlyList<KitEntry> Each<T>(IEnumerable<T> things, Func<T, string> key, Func<T, IEnumerable<string>> lines) =>
        [.. things.Select(t => new KitEntry(key(t), [.. lines(t)]))];
}
