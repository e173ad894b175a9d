using RackSide.Training.Body;
using RackSide.Training.Schedule;

namespace RackSide.Pages.Bodies;

/// <summary>The page of the body: the chart, and under it trend, verdict and what follows at the table.</summary>
/// <param name="Standing">What it shows.</param>
internal sealed record StandingPage(BodyStanding Standing) : BodyPage($"BODY  {Standing.Today.Short()}")
{
    private const int LabelRoom = 10;
    private const int ShortLabelRoom = 9;

    // The chart takes at most two fifths of the page, so that the verdict stands under it without a key.
    private const int Parts = 2;
    private const int Of = 5;
    private const int MostChartRows = 11;

    /// <summary>How many lines were moved on, on a page too small for all.</summary>
    public int MovedOn { get; init; }

    /// <summary>The page.</summary>
    public override Page Draw(PageSize size)
    {
        var lines = Lines(size);
        var unseen = Math.Max(0, lines.Count - BodyText.Height(size));
        var page = unseen == 0 ? this : this with { Hints = [.. Hints.Take(1), new("+ -", "read on"), .. Hints.Skip(1)] };
        return page.Draw(size, [.. lines.Skip(Math.Min(MovedOn, unseen))]);
    }

    private List<BodyLine> Lines(PageSize size)
    {
        var chart = WeightChart.Of(Standing, Math.Min(MostChartRows, BodyText.Height(size) * Parts / Of), BodyText.Width(size));
        var text = StandingLines.Of(Standing).SelectMany(line => Labelled(line, size)).ToList();
        var spaced = !size.Compact && chart.Count > 0;
        return [.. chart.Select(row => new BodyLine(row)), .. spaced ? [BodyLine.Blank] : Array.Empty<BodyLine>(), .. text];
    }

    private static IEnumerable<BodyLine> Labelled((string Label, string Text) line, PageSize size)
    {
        var room = size.Compact ? ShortLabelRoom : LabelRoom;
        var look = line.Label == "verdict" ? Look.Bold : Look.Plain;
        return Frame.Wrap(line.Text, BodyText.Width(size) - room)
            .Select((text, i) => new BodyLine((i == 0 ? line.Label : "").PadRight(room) + text, look));
    }
}
