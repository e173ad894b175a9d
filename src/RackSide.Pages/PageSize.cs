namespace RackSide.Pages;

/// <summary>How many cells a page has. Anything is allowed; pages adapt down to 30x8.</summary>
/// <param name="Columns">Cells across.</param>
/// <param name="Rows">Cells down.</param>
public readonly record struct PageSize(int Columns, int Rows)
{
    /// <summary>
    /// A page that is read out line by line and not looked at: room for every line, no picture and no large digits.
    /// </summary>
    public static PageSize ToRead { get; } = new(100, 100) { Plain = true };

    /// <summary>Whether the page is read line by line.</summary>
    public bool Plain { get; init; }

    /// <summary>Whether only the large digits and the keys are wanted.</summary>
    public bool Big { get; init; }

    /// <summary>Whether the terminal's font has eighths of a block; the fonts of the Linux console have none.</summary>
    public bool Fine { get; init; }

    /// <summary>Whether nothing may flash.</summary>
    public bool Steady { get; init; }

    /// <summary>Whether large digits may be drawn, on a page of at least so many rows.</summary>
    internal bool HasDigits(int least) => !Plain && Rows >= least;

    /// <summary>Whether only the compact arrangement fits, as on a 7-inch panel with a large font.</summary>
    public bool Compact => Plain || Columns < 72 || Rows < 20;
}
