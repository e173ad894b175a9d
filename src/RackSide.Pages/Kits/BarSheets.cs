using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Pages.Kits;

/// <summary>The bars, and one bar.</summary>
internal static class BarSheets
{
    private static readonly string[] Names = ["bar", "light bar", "technique bar", "curl bar", "bench bar", "hex bar", "thick bar", "old bar"];

    /// <summary>The motions that are done with a bar.</summary>
    private static readonly Motion[] OnBars =
    [
        Motion.Squat, Motion.Hinge, Motion.HorizontalPull, Motion.HorizontalPush, Motion.VerticalPush, Motion.ElbowFlexion, Motion.ElbowExtension, Motion.SingleLeg,
    ];

    /// <summary>All bars, the one used first on top.</summary>
    public static MenuSheet All() => new(
        "KIT  bars",
        _ => ["The first is used where nothing else is said; a lighter one for loads under it."],
        kit => [.. kit.Bars.Select((bar, i) => new MenuLine(bar.Name, KitWords.Of(bar), now => SheetTurn.To(now, One(i)))), new("another bar", "", now => SheetTurn.To(now, Another(now)))]);

    private static NumberSheet Another(GymKit kit) => NumberSheet.ForMass("KIT  bars", "What does the bar weigh, without collars?", kit.Unit, (now, mass) =>
    {
        var bar = new Bar(KitWords.Free(mass < now.Bars[0].Mass ? "light bar" : "bar", now.Bars.Select(b => b.Name)), mass);
        return new(now with { Bars = [.. now.Bars, bar] }, $"{bar.Name} is added.") { Close = 1, Open = One(now.Bars.Count) };
    });

    private static MenuSheet One(int at) => new(
        "KIT  bar",
        kit => [at < kit.Bars.Count ? $"{kit.Bars[at].Name}, {KitWords.Of(kit.Bars[at])}" : "It is taken out."],
        kit => at >= kit.Bars.Count ? [new("back", "", now => SheetTurn.Done(now))] :
        [
            new("name", kit.Bars[at].Name, now => SheetTurn.To(now, Name(at))),
            new("mass", kit.Bars[at].Bare.ToString(), now => SheetTurn.To(now, Weight(at, now))),
            new("collars, one of two", kit.Bars[at].Collar?.ToString() ?? "not counted", now => SheetTurn.To(now, Collars(at, now))),
            new("room on a sleeve", kit.Bars[at].Sleeve is { } mm ? KitWords.Length(mm) : "not told", now => SheetTurn.To(now, Sleeve(at))),
            new("kept for", KitWords.For(kit.Bars[at]), now => SheetTurn.To(now, new TickSheet("KIT  bar kept for", "Tick motions; none ticked serves any.", [.. OnBars.Select(m => m.Name())],
                (then, i) => then.Bars[at].Motions.Contains(OnBars[i]), (then, i) => Changed(then, at, b => b with { Motions = Toggled(b.Motions, OnBars[i]) })))),
            new("to another rack height", kit.Bars[at].MovesLoaded ? "with its plates on" : "stripped", now => new(Changed(now, at, b => b with { MovesLoaded = !b.MovesLoaded }))),
            new("use it first", at == 0 ? "it is" : "", now => SheetTurn.Done(now with { Bars = [now.Bars[at], .. now.Bars.Where((_, i) => i != at)] }, $"{now.Bars[at].Name} is used first.")),
            new("take it out of the kit", "", now => now.Bars.Count == 1 ? new(now, "The only bar stays; change its mass instead.")
                : SheetTurn.Done(now with { Bars = [.. now.Bars.Where((_, i) => i != at)] }, $"{now.Bars[at].Name} is taken out.")),
            new("back", "", now => SheetTurn.Done(now)),
        ]);

    private static MenuSheet Name(int at) => new("KIT  bar name", _ => ["Any other name can be written in the file."], kit =>
        [.. Names.Select(n => new MenuLine(n, "", now => SheetTurn.Done(Changed(now, at, b => b with { Name = KitWords.Free(n, now.Bars.Where((_, i) => i != at).Select(o => o.Name)) }))))]);

    private static NumberSheet Weight(int at, GymKit kit) => NumberSheet.ForMass("KIT  bar", "What does the bar weigh, without collars?", kit.Bars[at].Bare.Unit, (now, mass) =>
        SheetTurn.Done(Changed(now, at, b => Same(b, mass, b.Collar))));

    private static NumberSheet Collars(int at, GymKit kit) => NumberSheet.ForMass(
        "KIT  bar",
        "What does one collar weigh? Two of them count.",
        kit.Bars[at].Bare.Unit,
        (now, mass) => SheetTurn.Done(Changed(now, at, b => Same(b, b.Bare, mass))),
        "collars do not count",
        now => SheetTurn.Done(Changed(now, at, b => Same(b, b.Bare, null))));

    private static NumberSheet Sleeve(int at) => NumberSheet.ForNumber(
        "KIT  bar",
        "How much room for plates is on one sleeve, with the collar on?",
        "mm",
        (now, mm) => mm is >= 1 and <= 1000 ? SheetTurn.Done(Changed(now, at, b => b with { Sleeve = mm })) : new(now, "1 mm to 1000 mm; nothing has changed."),
        "not told, it never runs short",
        now => SheetTurn.Done(Changed(now, at, b => b with { Sleeve = null })));

    private static Bar Same(Bar bar, Mass bare, Mass? collar) => Bar.Collared(bar.Name, bare, collar) with
    {
        Sleeve = bar.Sleeve,
        Motions = bar.Motions,
        Exercises = bar.Exercises,
        MovesLoaded = bar.MovesLoaded,
    };

    private static IReadOnlyList<Motion> Toggled(IReadOnlyList<Motion> motions, Motion motion) =>
        motions.Contains(motion) ? [.. motions.Where(m => m != motion)] : [.. motions, motion];

    private static GymKit Changed(GymKit kit, int at, Func<Bar, Bar> change) => kit with { Bars = [.. kit.Bars.Select((b, i) => i == at ? change(b) : b)] };
}
