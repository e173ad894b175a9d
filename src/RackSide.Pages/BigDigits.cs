namespace RackSide.Pages;

/// <summary>
/// Digits made of full blocks, to be read from the bar. A dot is one cell high and two wide, because cells are about
/// twice as high as wide, and grows with the room there is.
/// </summary>
public static class BigDigits
{
    /// <summary>The rows of a digit at scale 1.</summary>
    public const int Dots = 5;

    private static readonly Dictionary<char, string[]> Shapes = new()
    {
        ['0'] = ["###", "#.#", "#.#", "#.#", "###"],
        ['1'] = ["..#", "..#", "..#", "..#", "..#"],
        ['2'] = ["###", "..#", "###", "#..", "###"],
        ['3'] = ["###", "..#", "###", "..#", "###"],
        ['4'] = ["#.#", "#.#", "###", "..#", "..#"],
        ['5'] = ["###", "#..", "###", "..#", "###"],
        ['6'] = ["###", "#..", "###", "#.#", "###"],
        ['7'] = ["###", "..#", "..#", "..#", "..#"],
        ['8'] = ["###", "#.#", "###", "#.#", "###"],
        ['9'] = ["###", "#.#", "###", "..#", "###"],
        ['x'] = ["...", "#.#", ".#.", "#.#", "..."],
        [':'] = [".", "#", ".", "#", "."],
        ['.'] = [".", ".", ".", ".", "#"],
        [' '] = [".", ".", ".", ".", "."],
    };

    /// <summary>Columns a text takes when a dot is that many columns wide.</summary>
    public static int Width(string text, int dotColumns) => Math.Max(0, text.Sum(c => Shapes[c][0].Length + 1) - 1) * dotColumns;

    /// <summary>
    /// The largest scale at which a text fits a room: how many rows and columns a dot gets; (0, 0) where it does not fit at
    /// all.
    /// </summary>
    public static (int Rows, int Columns) Scale(string text, int columns, int rows)
    {
        for (var high = rows / Dots; high > 0; high--)
        {
            for (var wide = (2 * high) + 1; wide >= 2 * high; wide--)
            {
                if (Width(text, wide) <= columns && (wide == 2 * high || high == 1))
                {
                    return (high, wide);
                }
            }
        }

        return rows >= Dots && Width(text, 1) <= columns ? (1, 1) : (0, 0);
    }

    /// <summary>Draws a text at a scale; gives the column right of it.</summary>
    public static int Draw(Canvas canvas, int column, int row, string text, (int Rows, int Columns) scale, Look look)
    {
        foreach (var shape in text.Select(c => Shapes[c]))
        {
            DrawShape(canvas, column, row, shape, scale, look);
            column += (shape[0].Length + 1) * scale.Columns;
        }

        return column;
    }

    private static void DrawShape(Canvas canvas, int column, int row, string[] shape, (int Rows, int Columns) scale, Look look)
    {
        for (var y = 0; y < Dots * scale.Rows; y++)
        {
            for (var x = 0; x < shape[0].Length * scale.Columns; x++)
            {
                if (shape[y / scale.Rows][x / scale.Columns] == '#')
                {
                    canvas.Set(column + x, row + y, '█', look);
                }
            }
        }
    }
}
