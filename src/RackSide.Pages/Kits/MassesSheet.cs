using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Pages.Kits;

/// <summary>A list of masses: dumbbells, positions of a stack, plates laid on it. Single ones and rows can be added.</summary>
/// <param name="Title">Where we are.</param>
/// <param name="Of">The masses.</param>
/// <param name="With">The kit with others.</param>
internal sealed record Masses(string Title, Func<GymKit, IReadOnlyList<Mass>> Of, Func<GymKit, IReadOnlyList<Mass>, GymKit> With)
{
    /// <summary>Far more than stand on any rack.</summary>
    private const int MostInARow = 60;

    /// <summary>Whether one mass may be there twice.</summary>
    public bool Twice { get; init; }

    /// <summary>The fewest there must be.</summary>
    public int Least { get; init; }

    /// <summary>The most there may be.</summary>
    public int Most { get; init; } = 99;

    /// <summary>The page.</summary>
    public MenuSheet Sheet() => new(Title, kit => [Of(kit).Count == 0 ? "None yet." : $"{KitWords.All(Of(kit))}."], _ =>
    [
        new("add one mass", "", kit => SheetTurn.To(kit, One(kit))),
        new("add a row: first, step, last", "", kit => SheetTurn.To(kit, First(kit))),
        new("take one out", "", kit => SheetTurn.To(kit, Out(kit))),
        new("back", "", kit => SheetTurn.Done(kit)),
    ]);

    /// <summary>A row from its first mass on: what is asked one after the other.</summary>
    public NumberSheet First(GymKit kit) => NumberSheet.ForMass(Title, "The first mass of the row?", kit.Unit, (now, first) =>
        SheetTurn.To(now, NumberSheet.ForMass(Title, $"From {first} by which step?", first.Unit, (then, step) =>
            SheetTurn.To(then, NumberSheet.ForMass(Title, $"From {first} by {step.Number} to which last mass?", first.Unit, (last, to) => Row(last, first, step, to))))));

    private NumberSheet One(GymKit kit) => NumberSheet.ForMass(Title, "Which mass?", kit.Unit, (now, mass) =>
        Of(now).Contains(mass) && !Twice ? new(now, $"{mass} is there already.")
        : Of(now).Count >= Most ? new(now, $"There are {Most}, and that is the most.")
        : SheetTurn.Done(With(now, [.. Of(now).Append(mass).Order()]), $"{mass} is added."));

    private NumberSheet Out(GymKit kit) => NumberSheet.ForMass(Title, "Which mass is taken out?", kit.Unit, (now, mass) =>
        !Of(now).Contains(mass) ? new(now, $"{mass} is not there; nothing has changed.")
        : Of(now).Count <= Least ? new(now, "The last one stays; take the whole thing out instead.")
        : SheetTurn.Done(With(now, Without(Of(now), mass)), $"{mass} is taken out."));

    private SheetTurn Row(GymKit kit, Mass first, Mass step, Mass last)
    {
        if (first.Unit != step.Unit || first.Unit != last.Unit)
        {
            return new(kit, "A row is in one unit; nothing has changed.");
        }

        List<Mass> row = [];
        for (var next = first; next <= last && row.Count <= MostInARow; next += step)
        {
            row.Add(next);
        }

        List<Mass> all = [.. Of(kit), .. row.Where(m => !Of(kit).Contains(m))];
        return row.Count == 0 ? new(kit, $"{last} is lighter than {first}; nothing has changed.")
            : row.Count > MostInARow || all.Count > Most ? new(kit, $"That is more than {Math.Min(MostInARow, Most)}; nothing has changed.")
            : new SheetTurn(With(kit, [.. all.Order()]), $"{row.Count} masses, {row[0].Number} to {row[^1]}.") { Close = 3 };
    }

    private static IReadOnlyList<Mass> Without(IReadOnlyList<Mass> masses, Mass mass)
    {
        List<Mass> left = [.. masses];
        left.Remove(mass);
        return left;
    }
}
