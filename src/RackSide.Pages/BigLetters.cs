namespace RackSide.Pages;

/// <summary>A name made of full blocks, to be read from across the room; of letters that have no shape here nothing is drawn.</summary>
public static class BigLetters
{
    private static readonly Dictionary<char, string[]> Shapes = new()
    {
        ['A'] = [".#.", "#.#", "###", "#.#", "#.#"],
        ['B'] = ["##.", "#.#", "##.", "#.#", "##."],
        ['C'] = ["###", "#..", "#..", "#..", "###"],
        ['D'] = ["##.", "#.#", "#.#", "#.#", "##."],
        ['E'] = ["###", "#..", "##.", "#..", "###"],
        ['F'] = ["###", "#..", "##.", "#..", "#.."],
        ['G'] = ["###", "#..", "#.#", "#.#", "###"],
        ['H'] = ["#.#", "#.#", "###", "#.#", "#.#"],
        ['I'] = ["#", "#", "#", "#", "#"],
        ['J'] = ["..#", "..#", "..#", "#.#", "###"],
        ['K'] = ["#.#", "#.#", "##.", "#.#", "#.#"],
        ['L'] = ["#..", "#..", "#..", "#..", "###"],
        ['M'] = ["#...#", "##.##", "#.#.#", "#...#", "#...#"],
        ['N'] = ["#..#", "##.#", "#.##", "#..#", "#..#"],
        ['O'] = ["###", "#.#", "#.#", "#.#", "###"],
        ['P'] = ["###", "#.#", "###", "#..", "#.."],
        ['Q'] = ["###.", "#.#.", "#.#.", "###.", "..##"],
        ['R'] = ["##.", "#.#", "##.", "#.#", "#.#"],
        ['S'] = ["###", "#..", "###", "..#", "###"],
        ['T'] = ["###", ".#.", ".#.", ".#.", ".#."],
        ['U'] = ["#.#", "#.#", "#.#", "#.#", "###"],
        ['V'] = ["#.#", "#.#", "#.#", "#.#", ".#."],
        ['W'] = ["#...#", "#...#", "#.#.#", "##.##", "#...#"],
        ['X'] = ["#.#", "#.#", ".#.", "#.#", "#.#"],
        ['Y'] = ["#.#", "#.#", ".#.", ".#.", ".#."],
        ['Z'] = ["###", "..#", ".#.", "#..", "###"],
        ['-'] = ["..", "..", "##", "..", ".."],
        ['\''] = ["#", "#", ".", ".", "."],
        ['.'] = [".", ".", ".", ".", "#"],
        [' '] = [".", ".", ".", ".", "."],
    };

    /// <summary>The rows of a letter at scale 1.</summary>
    public const int Dots = 5;

    /// <summary>
    /// The largest scale at which a name fits a room: rows and columns of a dot; (0, 0) where it does not fit, or has a
    /// letter without a shape.
    /// </summary>
    public static (int Rows, int Columns) Scale(string name, int columns, int rows)
    {
        if (name.ToUpperInvariant().Any(c => !Shapes.ContainsKey(c)))
        {
            return (0, 0);
        }

        for (var high = rows / Dots; high > 0; high--)
        {
            if (Width(name, 2 * high) <= columns)
            {
                return (high, 2 * high);
            }
        }

        return rows >= Dots && Width(name, 1) <= columns ? (1, 1) : (0, 0);
    }

    /// <summary>Draws a name at a scale.</summary>
    public static void Draw(Canvas canvas, int column, int row, string name, (int Rows, int Columns) scale, Look look)
    {
        foreach (var shape in name.ToUpperInvariant().Select(c => Shapes[c]))
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

            column += (shape[0].Length + 1) * scale.Columns;
        }
    }

    private static int Width(string name, int dotColumns) =>
        Math.Max(0, name.ToUpperInvariant().Sum(c => Shapes[c][0].Length + 1) - 1) * dotColumns;
}
