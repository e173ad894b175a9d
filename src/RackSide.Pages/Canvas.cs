namespace RackSide.Pages;

/// <summary>A page being drawn. Whatever falls outside is dropped, so pages need no checks of their own.</summary>
public sealed class Canvas
{
    private readonly Cell[] cells;
    private int cursorColumn;
    private int cursorRow;

    /// <summary>A blank canvas.</summary>
    public Canvas(PageSize size)
    {
        Size = size;
        cells = new Cell[size.Columns * size.Rows];
        Array.Fill(cells, Cell.Blank);
    }

    /// <summary>Cells across and down.</summary>
    public PageSize Size { get; }

    /// <summary>What the page says of itself to whoever reads it line by line.</summary>
    public Telling Tells { get; set; } = new();

    /// <summary>Writes text from a place to the right; characters past the edge are dropped.</summary>
    public void Write(int column, int row, string text, Look look = Look.Plain)
    {
        for (var i = 0; i < text.Length; i++)
        {
            Set(column + i, row, text[i], look);
        }
    }

    /// <summary>Writes text so that it ends just left of a column.</summary>
    public void WriteRight(int endColumn, int row, string text, Look look = Look.Plain) =>
        Write(endColumn - text.Length, row, text, look);

    /// <summary>Fills part of a row with one glyph.</summary>
    public void Fill(int column, int row, int length, char glyph, Look look = Look.Plain)
    {
        for (var i = 0; i < length; i++)
        {
            Set(column + i, row, glyph, look);
        }
    }

    /// <summary>Sets one cell.</summary>
    public void Set(int column, int row, char glyph, Look look = Look.Plain)
    {
        if (column >= 0 && column < Size.Columns && row >= 0 && row < Size.Rows)
        {
            cells[(row * Size.Columns) + column] = new Cell(glyph, look);
        }
    }

    /// <summary>Declares the active place.</summary>
    public void Cursor(int column, int row)
    {
        cursorColumn = Math.Clamp(column, 0, Math.Max(0, Size.Columns - 1));
        cursorRow = Math.Clamp(row, 0, Math.Max(0, Size.Rows - 1));
    }

    /// <summary>The finished page.</summary>
    public Page Done() => new(Size, (Cell[])cells.Clone(), cursorColumn, cursorRow, Tells);
}
