namespace RackSide.Pages;

/// <summary>How many cells a page has. Anything is allowed; pages adapt down to 30x8.</summary>
/// <param name="Columns">Cells across.</param>
/// <param name="Rows">Cells down.</param>
public readonly record struct PageSize(int Columns, int Rows)
{
    /// <summary>Whether only the compact arrangement fits, as on a 7-inch panel with a large font.</summary>
    public bool Compact => Columns < 72 || Rows < 20;
}
