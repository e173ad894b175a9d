using RackSide.Training.Kit;

namespace RackSide.Pages.Kits;

/// <summary>One page of changing the kit. Sheets lie on each other; the uppermost is shown and takes the keys.</summary>
internal abstract class Sheet
{
    /// <summary>What it shows of the kit as it stands.</summary>
    public abstract BodyPage View(GymKit kit);

    /// <summary>Takes a key that is not for going back.</summary>
    public abstract SheetTurn Press(GymKit kit, KeyPress key);
}

/// <summary>What a key led to.</summary>
/// <param name="Kit">The kit after it.</param>
/// <param name="Said">A sentence about it, or null.</param>
internal sealed record SheetTurn(GymKit Kit, string? Said = null)
{
    /// <summary>A sheet laid on this one, after those to be closed are gone.</summary>
    public Sheet? Open { get; init; }

    /// <summary>How many sheets are closed, this one first.</summary>
    public int Close { get; init; }

    /// <summary>A key that means nothing here.</summary>
    public static SheetTurn Dead(GymKit kit) => new(kit, Notice.DeadKey);

    /// <summary>Another sheet, with the kit as it is.</summary>
    public static SheetTurn To(GymKit kit, Sheet sheet) => new(kit) { Open = sheet };

    /// <summary>This sheet is done with.</summary>
    public static SheetTurn Done(GymKit kit, string? said = null) => new(kit, said) { Close = 1 };
}
