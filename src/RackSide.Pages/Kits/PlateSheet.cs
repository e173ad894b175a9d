using RackSide.Pages.SetUps;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Pages.Kits;

/// <summary>
/// Plates with their pairs. Digits are counts here, so the star goes to the next line; ENTER opens a kind of plates, or
/// asks for a new one.
/// </summary>
/// <param name="title">Where we are.</param>
/// <param name="of">The plates of the kit.</param>
/// <param name="with">The kit with other ones.</param>
internal sealed class PlateSheet(string title, Func<GymKit, IReadOnlyList<PlatePairs>> of, Func<GymKit, IReadOnlyList<PlatePairs>, GymKit> with) : Sheet
{
    private int line;

    /// <inheritdoc/>
    public override BodyPage View(GymKit kit)
    {
        var plates = of(kit);
        line = Math.Min(line, plates.Count);
        return new ListPage(title, [.. plates.Select(p => new ListLine(p.Mass.ToString(), Value: Told(p))), new("another mass")], line)
        {
            Numbered = false,
            Above = ["How many pairs of each? A pair is one plate for each end."],
            Hints = [new("0-9", "pairs"), new("*", "next line"), new("+ -", "more, less"), new("ENTER", line == plates.Count ? "type a mass" : "thickness, take out", "open"), new("/", "back"), new("!", "stop signs")],
        };
    }

    /// <inheritdoc/>
    public override SheetTurn Press(GymKit kit, KeyPress key)
    {
        var plates = of(kit);
        line = Math.Min(line, plates.Count);
        switch (key)
        {
            case var _ when key.IsNextLine(): line = (line + 1) % (plates.Count + 1); return new(kit);
            case var _ when key.IsLineUp(): line = (line + plates.Count) % (plates.Count + 1); return new(kit);
            case var _ when line == plates.Count: return key.IsAccept() ? SheetTurn.To(kit, Another(kit)) : SheetTurn.Dead(kit);
            case var _ when key.Digit() is { } digit: return Count(kit, plates, digit);
            case var _ when key.IsMore(): return Count(kit, plates, plates[line].Pairs + 1);
            case var _ when key.IsFewer(): return Count(kit, plates, plates[line].Pairs - 1);
            case var _ when key.IsAccept(): return SheetTurn.To(kit, One(plates[line].Mass));
            default: return SheetTurn.Dead(kit);
        }
    }

    private SheetTurn Count(GymKit kit, IReadOnlyList<PlatePairs> plates, int pairs) => pairs switch
    {
        < 0 => new(kit, "There are no pairs to take away."),
        > UnitChoices.MostPairs => new(kit, $"At most {UnitChoices.MostPairs} pairs of one plate."),
        _ => new(Changed(kit, plates[line].Mass, p => p with { Pairs = pairs })),
    };

    private NumberSheet Another(GymKit kit) => NumberSheet.ForMass(title, "The mass of one plate?", kit.Unit, (now, mass) =>
        of(now).Any(p => p.Mass == mass)
            ? new(now, $"{mass} is listed already; its line counts the pairs.")
            : SheetTurn.Done(with(now, [.. of(now).Append(new(mass, 1)).OrderByDescending(p => p.Mass)]), $"{mass}: 1 pair; its line counts more."));

    private MenuSheet One(Mass mass) => new($"{title}  {mass}", _ => [], kit =>
    [
        new("thickness", of(kit).FirstOrDefault(p => p.Mass == mass)?.Thickness is { } mm ? KitWords.Length(mm) : "not told", now => SheetTurn.To(now, Thickness(mass))),
        new("take it out of the kit", "", now => SheetTurn.Done(with(now, [.. of(now).Where(p => p.Mass != mass)]), $"{mass} is taken out.")),
        new("back", "", now => SheetTurn.Done(now)),
    ]);

    private NumberSheet Thickness(Mass mass) => NumberSheet.ForNumber(
        $"{title}  {mass}",
        "How thick is one plate?",
        "mm",
        (kit, mm) => mm is >= 1 and <= 1000 ? SheetTurn.Done(Changed(kit, mass, p => p with { Thickness = mm })) : new(kit, "1 mm to 1000 mm; nothing has changed."),
        "not told, and no room is reckoned for it",
        kit => SheetTurn.Done(Changed(kit, mass, p => p with { Thickness = null })));

    private GymKit Changed(GymKit kit, Mass mass, Func<PlatePairs, PlatePairs> change) => with(kit, [.. of(kit).Select(p => p.Mass == mass ? change(p) : p)]);

    private static string Told(PlatePairs plates) => (plates.Pairs switch { 0 => "none", 1 => "1 pair", var n => $"{n} pairs" })
        + (plates.Thickness is { } mm ? $", {KitWords.Length(mm)} thick" : "");
}
