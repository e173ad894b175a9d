using RackSide.Training.Kit;

namespace RackSide.Pages.Kits;

/// <summary>Lines with boxes. ENTER and the star tick the marked line, a digit its own.</summary>
/// <param name="title">Where we are.</param>
/// <param name="above">What is said above the lines.</param>
/// <param name="lines">The lines.</param>
/// <param name="isTicked">Whether a line is ticked in a kit.</param>
/// <param name="tick">The kit with that line ticked, or not any more.</param>
internal sealed class TickSheet(string title, string above, IReadOnlyList<string> lines, Func<GymKit, int, bool> isTicked, Func<GymKit, int, GymKit> tick) : Sheet
{
    private int line;

    /// <inheritdoc/>
    public override BodyPage View(GymKit kit) => new ListPage(title, [.. lines.Select((l, i) => new ListLine(l, isTicked(kit, i)))], line)
    {
        Numbered = lines.Count <= 9,
        Above = [above],
        Hints = [new("ENTER *", "tick"), new("+ -", "up, down"), new("/", "back"), new("!", "stop signs")],
    };

    /// <inheritdoc/>
    public override SheetTurn Press(GymKit kit, KeyPress key)
    {
        if ((key.IsAccept() ? line : lines.Count <= 9 || key.Digit() is null ? ListPage.Tick(key, line, lines.Count) : null) is { } ticked)
        {
            line = ticked;
            return new(tick(kit, ticked));
        }

        var moved = key.Digit() is null ? ListPage.Move(key, line, lines.Count) : null;
        line = moved ?? line;
        return moved is null ? SheetTurn.Dead(kit) : new(kit);
    }
}
