namespace RackSide.Pages;

/// <summary>
/// Digits made of full blocks, to be read from the bar. A dot is one cell high and two wide, because cells are about
/// twice as high as wide, and grows with the room there is.
/// </summary>
public static class BigDigits
{
    /// <summary>The rows of a digit at scale 1.</summary>
    public const int Dots = 5;

    // A digit three dots wide, in cells twice as high as wide, is then not narrower than half its height, which is the least
    // that ISO 9241-3 allows (0.5:1 to 1:1).
    private const int MostRowsADotColumn = 3;

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

    /// <summary>
    /// The tallest a text can be in a room, whatever the height: its rows, and the columns of a dot; (0, 0) where it does not
    /// fit at all. A dot is at most as wide as it would be at full scale, and not so narrow that a digit becomes a pole.
    /// </summary>
    public static (int Rows, int Columns) Tallest(string text, int columns, int rows)
    {
        for (var high = rows; high > Dots; high--)
        {
            var wide = Enumerable.Range(1, (high + 2) * 2 / Dots).LastOrDefault(w => Width(text, w) <= columns);
            if (high <= wide * MostRowsADotColumn)
            {
                return (high, wide);
            }
        }

        var small = Scale(text, columns, rows);
        return (small.Rows * Dots, small.Columns);
    }

    /// <summary>Draws a text at a scale; gives the column right of it.</summary>
    public static int Draw(Canvas canvas, int column, int row, string text, (int Rows, int Columns) scale, Look look) =>
        DrawTall(canvas, column, row, text, (Dots * scale.Rows, scale.Columns), look);

    /// <summary>Draws a text so many rows high, with dots so many columns wide; gives the column right of it.</summary>
    public static int DrawTall(Canvas canvas, int column, int row, string text, (int Rows, int Columns) tall, Look look)
    {
        foreach (var shape in text.Select(c => Shapes[c]))
        {
            DrawShape(canvas, column, row, shape, tall, look);
            column += (shape[0].Length + 1) * tall.Columns;
        }

        return column;
    }

    private static void DrawShape(Canvas canvas, int column, int row, string[] shape, (int Rows, int Columns) tall, Look look)
    {
        for (var y = 0; y < tall.Rows; y++)
        {
            for (var x = 0; x < shape[0].Length * tall.Columns; x++)
            {
                if (shape[Dot(y, tall.Rows)][x / tall.Columns] == '#')
                {
                    canvas.Set(column + x, row + y, '█', look);
                }
            }
        }
    }

    /// <summary>The row of dots that a row of a digit shows: strokes across are equally thick, and what is left over makes the uprights longer.</summary>
    private static int Dot(int row, int rows)
    {
        var stroke = rows / Dots;
        var middle = (rows - stroke) / 2;
        return row < stroke ? 0 : row < middle ? 1 : row < middle + stroke ? 2 : row < rows - stroke ? 3 : 4;
    }
}
