using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Pages.Kits;

/// <summary>Handles, machines, bands, the belt, and things without a mass.</summary>
internal static class OtherSheets
{
    private static readonly string[] MachineNames = ["cable stack", "assist machine", "leg press", "row machine", "chest press machine", "shoulder press machine"];

    private static readonly string[] BandNames = ["thin", "medium", "thick", "very thick", "long", "short"];

    /// <summary>Words that follow from what is listed with masses.</summary>
    private static readonly string[] Listed = ["barbell", "plates", "dumbbells", "cable stack"];

    /// <summary>Adjustable dumbbells.</summary>
    public static MenuSheet Handles() => new("KIT  handles", _ => ["Short handles that plates go on. Two alike make a pair."], kit =>
    [
        .. kit.Handles.Select((h, i) => new MenuLine(h.Bar.Name, $"{h.Count} of {h.Bar.Mass}", now => SheetTurn.To(now, Handle(i)))),
        new("another kind", "", now => SheetTurn.To(now, NumberSheet.ForMass("KIT  handles", "What does one handle weigh, with its collars?", now.Unit, (then, mass) =>
            new(then with { Handles = [.. then.Handles, new(new(KitWords.Free("short handle", then.Handles.Select(h => h.Bar.Name)), mass), 2)] }, "Two such handles are added.") { Close = 1, Open = Handle(then.Handles.Count) }))),
    ]);

    /// <summary>The stack and the machines with stacks of their own.</summary>
    public static MenuSheet Machines() => new("KIT  machines", _ => ["The stack serves a cable column and every machine without one of its own."], kit =>
    [
        new("stack", KitWords.Span(kit.Stack), now => SheetTurn.To(now, new Masses("KIT  stack", k => k.Stack, (k, m) => k with { Stack = m }).Sheet())),
        new("laid on the stack", KitWords.Span(kit.StackAddOns), now => SheetTurn.To(now, new Masses("KIT  laid on the stack", k => k.StackAddOns, (k, m) => k with { StackAddOns = m }) { Twice = true, Most = 8 }.Sheet())),
        .. kit.Machines.Select((m, i) => new MenuLine(m.Name, KitWords.Span(m.Positions), now => SheetTurn.To(now, Machine(i)))),
        new("another machine", "", now => SheetTurn.To(now, AnotherMachine())),
    ]);

    /// <summary>Bands.</summary>
    public static MenuSheet Bands() => new("KIT  bands", _ => ["A name, and about how much it carries at the bottom of a pull-up."], kit =>
    [
        .. kit.Bands.Select((b, i) => new MenuLine(b.Name, b.Help?.ToString() ?? "not measured", now => SheetTurn.To(now, Band(i)))),
        new("another band", "", now => SheetTurn.To(now, new MenuSheet("KIT  bands", _ => ["Which?"], _ =>
            [.. BandNames.Select(name => new MenuLine(name, "", then => SheetTurn.Done(then with { Bands = [.. then.Bands, new(KitWords.Free(name, then.Bands.Select(b => b.Name)), null)] })))]))),
    ]);

    /// <summary>The belt.</summary>
    public static MenuSheet Belt() => new("KIT  belt", _ => ["A belt that plates hang from, for pull-ups and dips."], _ =>
    [
        new("there is one", "", now => SheetTurn.Done(now with { Belt = new(null) })),
        new("there is one, and its own mass counts", "", now => SheetTurn.To(now, NumberSheet.ForMass("KIT  belt", "What does it weigh, with its chain?", now.Unit, (then, mass) =>
            new SheetTurn(then with { Belt = new(mass) }) { Close = 2 }))),
        new("there is none", "", now => SheetTurn.Done(now with { Belt = null })),
    ]);

    /// <summary>Things without a mass.</summary>
    public static TickSheet Things(GymKit kit)
    {
        List<string> words = [.. KitDefaults.EquipmentWords.Where(w => !Listed.Contains(w) && kit.Machines.All(m => m.Name != w) && !(w == "band" && kit.Bands.Count > 0))];
        return new("KIT  other things", "What else is here?", words, (now, i) => now.Equipment.Contains(words[i]), (now, i) => now with
        {
            Equipment = now.Equipment.Contains(words[i]) ? now.Equipment.Where(w => w != words[i]).ToHashSet() : now.Equipment.Append(words[i]).ToHashSet(),
        });
    }

    private static MenuSheet Handle(int at) => new("KIT  handle", _ => [], kit => at >= kit.Handles.Count ? [new("back", "", now => SheetTurn.Done(now))] :
    [
        new("how many", $"{kit.Handles[at].Count}", now => SheetTurn.To(now, NumberSheet.ForNumber("KIT  handle", "How many handles of this kind?", "handles", (then, n) =>
            n == decimal.Truncate(n) && n is >= 1 and <= 50 ? SheetTurn.Done(With(then, at, h => h with { Count = (int)n })) : new(then, "1 to 50; nothing has changed.")))),
        new("mass", kit.Handles[at].Bar.Mass.ToString(), now => SheetTurn.To(now, NumberSheet.ForMass("KIT  handle", "What does one weigh, with its collars?", now.Unit, (then, mass) =>
            SheetTurn.Done(With(then, at, h => h with { Bar = new(h.Bar.Name, mass) { Sleeve = h.Bar.Sleeve } }))))),
        new("plates", kit.Handles[at].Plates is { } own ? KitWords.Of(own) : "those of the bars", now => SheetTurn.To(now, new PlateSheet("KIT  plates of the handle",
            k => k.Handles[at].Plates ?? [], (k, p) => With(k, at, h => h with { Plates = p })))),
        new("take those of the bars", "", now => new(With(now, at, h => h with { Plates = null }))),
        new("take it out of the kit", "", now => SheetTurn.Done(now with { Handles = [.. now.Handles.Where((_, i) => i != at)] })),
        new("back", "", now => SheetTurn.Done(now)),
    ]);

    private static MenuSheet Machine(int at) => new("KIT  machine", kit => [at < kit.Machines.Count ? kit.Machines[at].Name : ""], kit => at >= kit.Machines.Count ? [new("back", "", now => SheetTurn.Done(now))] :
    [
        new("stack", KitWords.Span(kit.Machines[at].Positions), now => SheetTurn.To(now, Positions(at).Sheet())),
        new("laid on it", KitWords.Span(kit.Machines[at].AddOns), now => SheetTurn.To(now, new Masses("KIT  laid on it", k => k.Machines[at].AddOns, (k, m) => With(k, at, x => x with { AddOns = m })) { Twice = true, Most = 8 }.Sheet())),
        new("take it out of the kit", "", now => SheetTurn.Done(now with { Machines = [.. now.Machines.Where((_, i) => i != at)], Equipment = now.Equipment.Where(w => w != now.Machines[at].Name).ToHashSet() })),
        new("back", "", now => SheetTurn.Done(now)),
    ]);

    private static Masses Positions(int at) => new("KIT  positions", k => k.Machines[at].Positions, (k, m) => With(k, at, x => x with { Positions = m })) { Least = 1 };

    // A machine without a position could not be written, so its first row is asked for before it is there.
    private static MenuSheet AnotherMachine() => new("KIT  machines", _ => ["Which? Then its stack: first, step, last."], kit =>
        [.. MachineNames.Where(n => kit.Machines.All(m => m.Name != n)).Select(name => new MenuLine(name, "", now => SheetTurn.To(now, new Masses($"KIT  {name}",
            _ => [], (k, row) => k with { Machines = [.. k.Machines, new(name, row, [])] }).First(now)) with { Close = 1 }))]);

    private static MenuSheet Band(int at) => new("KIT  band", kit => [at < kit.Bands.Count ? kit.Bands[at].Name : ""], kit => at >= kit.Bands.Count ? [new("back", "", now => SheetTurn.Done(now))] :
    [
        new("carries about", kit.Bands[at].Help?.ToString() ?? "not measured", now => SheetTurn.To(now, NumberSheet.ForMass("KIT  band", "About how much does it carry at the bottom of a pull-up?", now.Unit,
            (then, mass) => SheetTurn.Done(Helping(then, at, mass)), "not measured", then => SheetTurn.Done(Helping(then, at, null))))),
        new("take it out of the kit", "", now => SheetTurn.Done(now with { Bands = [.. now.Bands.Where((_, i) => i != at)] })),
        new("back", "", now => SheetTurn.Done(now)),
    ]);

    private static GymKit Helping(GymKit kit, int at, Mass? help) => kit with { Bands = [.. kit.Bands.Select((b, i) => i == at ? b with { Help = help } : b)] };

    private static GymKit With(GymKit kit, int at, Func<Handle, Handle> change) => kit with { Handles = [.. kit.Handles.Select((h, i) => i == at ? change(h) : h)] };

    private static GymKit With(GymKit kit, int at, Func<Machine, Machine> change) => kit with { Machines = [.. kit.Machines.Select((m, i) => i == at ? change(m) : m)] };
}
