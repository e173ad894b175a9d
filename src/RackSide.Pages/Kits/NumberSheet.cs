using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Pages.Kits;

/// <summary>One number to type on the pad; a mass carries its unit, which the star changes.</summary>
/// <param name="title">Where we are.</param>
/// <param name="question">What is asked.</param>
/// <param name="below">What is said under the box.</param>
internal sealed class NumberSheet(string title, string question, string below) : Sheet
{
    /// <summary>The lightest and heaviest thing a gym lists, as its file takes them, in kilograms.</summary>
    private const decimal Least = 0.1m, Most = 500;

    private string typed = "";
    private MassUnit unit;
    private Func<GymKit, Mass, SheetTurn>? mass;
    private Func<GymKit, decimal, SheetTurn>? number;
    private Func<GymKit, SheetTurn>? nothing;
    private string after = "";

    /// <summary>Asks for a mass.</summary>
    /// <param name="title">Where we are.</param>
    /// <param name="question">What is asked.</param>
    /// <param name="unit">The unit to begin with.</param>
    /// <param name="take">What it does.</param>
    /// <param name="empty">What ENTER alone does, in words; null where it does nothing.</param>
    /// <param name="none">What ENTER alone does.</param>
    public static NumberSheet ForMass(
        string title, string question, MassUnit unit, Func<GymKit, Mass, SheetTurn> take, string? empty = null, Func<GymKit, SheetTurn>? none = null) =>
        new(title, question, $"As it is marked; * changes kg and lb.{(empty is null ? "" : $" ENTER alone: {empty}.")}") { unit = unit, mass = take, nothing = none };

    /// <summary>Asks for a number of something.</summary>
    public static NumberSheet ForNumber(
        string title, string question, string after, Func<GymKit, decimal, SheetTurn> take, string? empty = null, Func<GymKit, SheetTurn>? none = null) =>
        new(title, question, empty is null ? "" : $"ENTER alone: {empty}.") { after = after, number = take, nothing = none };

    /// <inheritdoc/>
    public override BodyPage View(GymKit kit) => new EntryPage(title, question, typed, EntryPage.NumberRoom)
    {
        Unit = mass is null ? after : unit.Symbol(),
        Below = below,
        Hints = mass is null
            ? [new("ENTER", "take it"), new("0-9 .", "type"), new("/", "back"), new("!", "stop signs")]
            : [new("ENTER", "take it"), new("0-9 .", "type"), new("*", "kg or lb"), new("/", "back"), new("!", "stop signs")],
    };

    /// <inheritdoc/>
    public override SheetTurn Press(GymKit kit, KeyPress key)
    {
        if (key.IsAccept())
        {
            return Take(kit);
        }

        if (mass is not null && key.IsNextLine())
        {
            unit = unit == MassUnit.Kilogram ? MassUnit.Pound : MassUnit.Kilogram;
            return new(kit);
        }

        var next = EntryPage.TypeNumber(typed, key);
        typed = next ?? typed;
        return next is null ? SheetTurn.Dead(kit) : new(kit);
    }

    private SheetTurn Take(GymKit kit)
    {
        if (typed.Length == 0)
        {
            return nothing is null ? new(kit, "Nothing is typed yet; / goes back.") : nothing(kit);
        }

        if (NumberEntry.Parse(typed) is not { } amount)
        {
            return new(kit, $"\"{typed}\" is not a number; nothing has changed.");
        }

        return mass is null ? number!(kit, amount)
            : new Mass(amount, unit).Kilograms is >= Least and <= Most ? mass(kit, new(amount, unit))
            : new(kit, $"{new Mass(amount, unit)} is outside 0.1 kg to 500 kg; nothing has changed.");
    }
}
