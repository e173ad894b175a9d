using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Pages.Rack;

/// <summary>
/// One sleeve of the bar from the side, the lifter's end at the left: plates in the order they go on, each with its number
/// under it. Height tells heavy from light; the shade only parts neighbours.
/// </summary>
internal static class SleevePicture
{
    /// <summary>Rows the picture takes, numbers included.</summary>
    public const int Rows = 6;

    private const string Shades = "█▒";

    public static void Draw(Canvas canvas, int column, int row, BarStack stack)
    {
        var axis = row + 2;
        canvas.Fill(column, axis, 6, '─');
        canvas.Set(column + 6, axis, '┤');
        var x = column + 7;
        foreach (var (plate, i) in stack.Side.Select((p, i) => (p, i)))
        {
            x += DrawPlate(canvas, x, axis, stack.NamesUnits ? plate.ToString().Replace(" ", "", StringComparison.Ordinal) : plate.Number, HalfHeight(plate), Shades[i % Shades.Length]);
        }

        canvas.Fill(x, axis, 5, '─');
    }

    /// <summary>Rows above the axis, and as many below: about as discs of that mass stand beside each other.</summary>
    private static int HalfHeight(Mass plate) => plate.Kilograms switch
    {
        >= 9m => 2,
        >= 2.2m => 1,
        _ => 0,
    };

    private static int DrawPlate(Canvas canvas, int x, int axis, string number, int half, char shade)
    {
        var width = Math.Max(2, number.Length);
        for (var y = axis - half; y <= axis + half; y++)
        {
            canvas.Fill(x, y, width, shade);
        }

        canvas.Write(x, axis + 3, number);
        return width + 1;
    }
}
