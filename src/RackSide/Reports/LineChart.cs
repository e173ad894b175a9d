using System.Globalization;
using System.Xml.Linq;
using static RackSide.Reports.Html;

namespace RackSide.Reports;

/// <summary>
/// Numbers over time as a picture that a screen reader can tell: a title, a description with the first and last number,
/// and the same numbers as points. The scale does not begin at nothing, so its lowest and highest line are labelled.
/// </summary>
internal static class LineChart
{
    private const double Width = 320, Height = 96, Left = 44, Right = 8, Top = 8, Bottom = 18;

    /// <summary>The picture, with its name over it.</summary>
    /// <param name="name">What is shown.</param>
    /// <param name="unit">The unit of the numbers.</param>
    /// <param name="points">When and how much, oldest first; one or more.</param>
    /// <param name="stairs">Whether a number holds until the next one; else neighbours are joined by straight lines.</param>
    public static XElement Of(string name, string unit, IReadOnlyList<(NodaTime.LocalDate Date, decimal Value)> points, bool stairs)
    {
        var (low, high) = Scale(points);
        var told = $"{name}: {Number(points[0].Value)} {unit} on {Iso(points[0].Date)}, {Number(points[^1].Value)} {unit} on {Iso(points[^1].Date)}, {points.Count} {(points.Count == 1 ? "entry" : "entries")}";
        var places = points.Select(p => (X: X(p.Date, points), Y: Y(p.Value, low, high))).ToList();
        return E("figure", E("figcaption", $"{name}, {unit}"), E(
            "svg",
            A("viewBox", $"0 0 {Number((decimal)Width)} {Number((decimal)Height)}"), A("role", "img"), A("aria-label", told),
            E("title", told),
            Line(low, low, high), Line(high, low, high),
            E("polyline", A("points", string.Join(' ', Path(places, stairs))), A("fill", "none"), A("stroke", "#000"), A("stroke-width", "1.6")),
            places.Select(p => E("circle", A("cx", Rounded(p.X)), A("cy", Rounded(p.Y)), A("r", "2"))),
            Label(Left, Height - 4, "start", Iso(points[0].Date)),
            points.Count > 1 ? Label(Width - Right, Height - 4, "end", Iso(points[^1].Date)) : null));
    }

    private static IEnumerable<string> Path(List<(double X, double Y)> places, bool stairs)
    {
        for (var i = 0; i < places.Count; i++)
        {
            if (stairs && i > 0)
            {
                yield return $"{Rounded(places[i].X)},{Rounded(places[i - 1].Y)}";
            }

            yield return $"{Rounded(places[i].X)},{Rounded(places[i].Y)}";
        }
    }

    private static (decimal Low, decimal High) Scale(IReadOnlyList<(NodaTime.LocalDate Date, decimal Value)> points)
    {
        var (low, high) = (points.Min(p => p.Value), points.Max(p => p.Value));
        return low == high ? (low - 1, high + 1) : (low, high);
    }

    private static object[] Line(decimal value, decimal low, decimal high) =>
    [
        E("line", A("x1", Left), A("x2", Width - Right), A("y1", Rounded(Y(value, low, high))), A("y2", Rounded(Y(value, low, high))), A("stroke", "#999"), A("stroke-width", "0.6")),
        Label(Left - 5, Y(value, low, high) + 4, "end", Number(value)),
    ];

    private static XElement Label(double x, double y, string anchor, string text) =>
        E("text", A("x", Rounded(x)), A("y", Rounded(y)), A("text-anchor", anchor), A("font-size", "11"), text);

    private static double X(NodaTime.LocalDate date, IReadOnlyList<(NodaTime.LocalDate Date, decimal Value)> points)
    {
        var days = Math.Max(1, NodaTime.Period.DaysBetween(points[0].Date, points[^1].Date));
        return Left + ((Width - Left - Right) * NodaTime.Period.DaysBetween(points[0].Date, date) / days);
    }

    private static double Y(decimal value, decimal low, decimal high) =>
        Top + ((Height - Top - Bottom) * (double)((high - value) / (high - low)));

    private static string Iso(NodaTime.LocalDate date) => NodaTime.Text.LocalDatePattern.Iso.Format(date);

    private static string Number(decimal value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Rounded(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
