using System.Globalization;
using RackSide.Training.Body;
using RackSide.Training.Measures;

namespace RackSide.Pages.Bodies;

/// <summary>
/// Body weight by weekly means: a block a week at its height, the scale at the left, the newest at the right. Single mornings
/// are not shown, because they are mostly noise.
/// </summary>
internal static class WeightChart
{
    private const int Axis = 7;
    private const int ColumnsAWeek = 4;

    // Less than this is a flat line, whatever its wiggles; in the unit shown.
    private const decimal LeastSpan = 1;

    /// <summary>The rows, top first; none where there are fewer than two weeks or too few rows.</summary>
    /// <param name="standing">Whose weeks.</param>
    /// <param name="rows">How many rows there are for it, with its heading.</param>
    /// <param name="columns">How many columns.</param>
    public static IReadOnlyList<string> Of(BodyStanding standing, int rows, int columns)
    {
        var weeks = standing.Weeks.TakeLast((columns - Axis) / ColumnsAWeek).Select(w => w.Mean.Amount).ToList();
        if (weeks.Count < 2 || rows < 4)
        {
            return [];
        }

        var (low, high) = Bounds(weeks);
        var height = rows - 1;
        var at = weeks.Select(w => (int)Math.Round((w - low) / (high - low) * (height - 1))).ToList();
        return
        [
            $"{standing.Unit.Symbol()}, weekly means, {weeks.Count} weeks",
            .. Enumerable.Range(0, height).Select(row => Scale(row, height, low, high) + Blocks(at, height - 1 - row)),
        ];
    }

    private static (decimal Low, decimal High) Bounds(List<decimal> weeks)
    {
        var (low, high) = (weeks.Min(), weeks.Max());
        var more = Math.Max(0, (LeastSpan - (high - low)) / 2);
        return (low - more, high + more);
    }

    private static string Scale(int row, int height, decimal low, decimal high) =>
        (row == 0 ? Tenth(high) : row == height - 1 ? Tenth(low) : "").PadRight(Axis);

    private static string Blocks(List<int> at, int level) =>
        string.Concat(at.Select(a => (a == level ? "■" : " ").PadRight(ColumnsAWeek))).TrimEnd();

    private static string Tenth(decimal number) => number.ToString("0.0", CultureInfo.InvariantCulture);
}
