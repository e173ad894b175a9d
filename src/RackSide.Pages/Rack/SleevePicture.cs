using RackSide.Training.Loading;

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
        canvas.Set(column + 6, axis, '█');
        var x = column + 7;
        foreach (var (plate, i) in stack.Side.Select((p, i) => (p, i)))
        {
            x += DrawPlate(canvas, x, axis, plate.Number, Height(stack, i), Shades[i % Shades.Length]);
        }

        canvas.Fill(x, axis, 5, '─');
    }

    /// <summary>Half the height above the axis: the heaviest on this sleeve is tallest.</summary>
    private static int Height(BarStack stack, int index)
    {
        var share = stack.Side[index].Kilograms / stack.Side[0].Kilograms;
        return stack.Side[index].Kilograms < 2m || share < 0.15m ? 0 : share < 0.6m ? 1 : 2;
    }

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
