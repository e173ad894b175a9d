using RackSide.Training.Kit;

namespace RackSide.Pages.Kits;

/// <summary>A line of a menu.</summary>
/// <param name="Text">What it is.</param>
/// <param name="Value">How it stands; empty for nothing.</param>
/// <param name="Choose">What choosing it does.</param>
internal sealed record MenuLine(string Text, string Value, Func<GymKit, SheetTurn> Choose);

/// <summary>Lines to choose from; a digit chooses at once.</summary>
/// <param name="title">Where we are.</param>
/// <param name="above">What is said above the lines.</param>
/// <param name="lines">The lines, as the kit stands.</param>
internal sealed class MenuSheet(string title, Func<GymKit, IReadOnlyList<string>> above, Func<GymKit, IReadOnlyList<MenuLine>> lines) : Sheet
{
    private int chosen;

    /// <inheritdoc/>
    public override BodyPage View(GymKit kit)
    {
        var all = lines(kit);
        chosen = Math.Min(chosen, all.Count - 1);
        return new ListPage(title, [.. all.Select(l => new ListLine(l.Text, Value: l.Value))], chosen)
        {
            Above = above(kit),
            Hints = [new("ENTER", "choose"), new($"1-{Math.Min(9, all.Count)}", "at once"), new("+ -", "up, down"), new("/", "back"), new("!", "stop signs")],
        };
    }

    /// <inheritdoc/>
    public override SheetTurn Press(GymKit kit, KeyPress key)
    {
        var all = lines(kit);
        var line = key.IsAccept() ? Math.Min(chosen, all.Count - 1) : ListPage.Move(key, chosen, all.Count);
        chosen = line ?? chosen;
        return line is null ? SheetTurn.Dead(kit)
            : key.IsAccept() || key.Digit() is not null ? all[chosen].Choose(kit)
            : new(kit);
    }
}
