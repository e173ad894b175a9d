using System.Text;

namespace RackSide.Pages;

/// <summary>A screen as a value: a grid of cells and a declared cursor. Whoever paints it adds nothing.</summary>
public sealed class Page
{
    private readonly Cell[] cells;

    internal Page(PageSize size, Cell[] cells, int cursorColumn, int cursorRow, Telling tells)
    {
        Tells = tells;
        Size = size;
        this.cells = cells;
        CursorColumn = cursorColumn;
        CursorRow = cursorRow;
    }

    /// <summary>A page of cells, row after row, as one that was kept.</summary>
    /// <exception cref="ArgumentException">They are not as many as the size says, or the cursor stands outside.</exception>
    public static Page Of(PageSize size, Cell[] cells, int cursorColumn, int cursorRow) =>
        cells.Length == size.Columns * size.Rows && cursorColumn >= 0 && cursorColumn < size.Columns && cursorRow >= 0 && cursorRow < size.Rows
            ? new Page(size, cells, cursorColumn, cursorRow, new Telling())
            : throw new ArgumentException($"no page of {size.Columns} by {size.Rows} cells", nameof(cells));

    /// <summary>Cells across and down.</summary>
    public PageSize Size { get; }

    /// <summary>The column of the active place, where readers and braille displays look.</summary>
    public int CursorColumn { get; }

    /// <summary>The row of the active place.</summary>
    public int CursorRow { get; }

    /// <summary>What it says of itself to whoever reads it line by line.</summary>
    public Telling Tells { get; }

    /// <summary>The same page in printable ASCII alone.</summary>
    public Page InAscii() => new(Size, [.. cells.Select(cell => cell with { Glyph = SevenBit.Of(cell.Glyph) })], CursorColumn, CursorRow, Tells);

    /// <summary>The same page, which says something else of itself.</summary>
    internal Page Telling(Telling tells) => new(Size, cells, CursorColumn, CursorRow, tells);

    /// <summary>The cell at a place.</summary>
    public Cell this[int column, int row] => cells[(row * Size.Columns) + column];

    /// <summary>The glyphs alone, a line a row, without trailing blanks: what tests and plain output read.</summary>
    public string Text
    {
        get
        {
            var text = new StringBuilder();
            for (var row = 0; row < Size.Rows; row++)
            {
                var line = new StringBuilder();
                for (var column = 0; column < Size.Columns; column++)
                {
                    line.Append(this[column, row].Glyph);
                }

                text.Append(line.ToString().TrimEnd()).Append('\n');
            }

            return text.ToString();
        }
    }
}
