namespace RackSide.Pages.Settings;

/// <summary>What colours a screen uses. Whatever they are, a word, a mark or a place says the same.</summary>
public enum Tint
{
    /// <summary>The terminal's own two colours, and two hues on bars and plates.</summary>
    Hues,

    /// <summary>The terminal's own two colours alone.</summary>
    Grey,

    /// <summary>Bright white on black, whatever the terminal's own colours are.</summary>
    Contrast,
}

/// <summary>How a lifter wants the screen to look.</summary>
public sealed record Appearance
{
    /// <summary>What colours it uses.</summary>
    public Tint Tint { get; init; }

    /// <summary>Whether only printable ASCII is drawn.</summary>
    public bool SevenBit { get; init; }

    /// <summary>Whether only the load and reps or the clock are drawn, as large as can be, and what the keys do.</summary>
    public bool Big { get; init; }

    /// <summary>Whether the bar that says LIFT flashes when a rest is over; where not, it stands still.</summary>
    public bool Flash { get; init; } = true;

    /// <summary>Whether charts may end in eighths of a block, where not only ASCII is drawn.</summary>
    public bool Fine { get; init; }

    /// <summary>A page's size, with what of this concerns the drawing.</summary>
    public PageSize Of(int columns, int rows) => new(columns, rows) { Big = Big, Steady = !Flash, Fine = Fine && !SevenBit };
}
