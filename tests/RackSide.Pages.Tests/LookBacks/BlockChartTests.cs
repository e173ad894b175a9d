using CsCheck;
using NodaTime;
using RackSide.Pages.LookBacks;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;

namespace RackSide.Pages.Tests.LookBacks;

/// <summary>What holds of every chart, whatever its numbers.</summary>
public class BlockChartTests
{
    private const string Eighths = " ▁▂▃▄▅▆▇█";

    private static readonly LocalDate First = new(2026, 9, 7);

    // Some sessions or weeks have no number; every tenth number is a span.
    private static readonly Gen<CoursePoint?[]> Points = Gen.Select(Gen.Decimal[0.5m, 300], Gen.Int[0, 9], Gen.Int[0, 9]).Array[1, 60]
        .Select(all => all.Select((p, i) => p.Item2 == 0 && i > 0 ? null : new CoursePoint(First.PlusDays(i * 3), p.Item1, p.Item3 == 0 ? p.Item1 * 1.1m : p.Item1)).ToArray());

    private static readonly Gen<(CoursePoint?[] Points, int Rows, int Room, bool Fine)> Charts =
        Gen.Select(Points, Gen.Int[1, 14], Gen.Int[0, 80], Gen.Bool).Select((p, rows, more, fine) => (p, rows, p.Length + more, fine));

    [Fact]
    public void It_never_leaves_its_box() => Charts.Sample(c =>
    {
        var rows = BlockChart.Of(c.Points, c.Rows, c.Room, c.Fine);

        return rows.Count == c.Rows && rows.All(r => r.Length <= c.Room);
    });

    [Fact]
    public void The_highest_fills_the_height_and_nothing_that_was_done_is_invisible() => Charts.Sample(c =>
    {
        var heights = Heights(c);
        var highest = Array.FindIndex(c.Points, p => p?.Upper == c.Points.Max(q => q?.Upper));

        return heights[highest] == 8 * c.Rows && c.Points.Select((p, i) => p is null ? heights[i] == 0 : heights[i] > 0).All(seen => seen);
    });

    [Fact]
    public void More_is_never_drawn_lower() => Charts.Sample(c =>
    {
        var heights = Heights(c);
        var drawn = c.Points.Select((p, i) => (p?.Upper, Height: heights[i])).Where(p => p.Upper is not null).OrderBy(p => p.Upper).Select(p => p.Height).ToList();

        // A shade ends with a whole block, so only bars without one are told apart by eighths.
        return c.Points.Any(p => p is { } q && q.Upper > q.Value) || drawn.SequenceEqual(drawn.Order());
    });

    [Fact]
    public void A_bar_has_no_gap_and_stands_on_the_ground() => Charts.Sample(c =>
    {
        var (rows, width) = (BlockChart.Of(c.Points, c.Rows, c.Room, c.Fine), Width(c));

        return Enumerable.Range(0, c.Points.Length).All(bar =>
            rows.Select(r => At(r, bar * width) == ' ').Aggregate((Seen: false, Whole: true), (a, empty) => (a.Seen || !empty, a.Whole && !(a.Seen && empty))).Whole);
    });

    [Fact]
    public void Without_fine_glyphs_it_draws_only_what_console_fonts_have() => Charts.Where(c => !c.Fine).Sample(c =>
        BlockChart.Of(c.Points, c.Rows, c.Room, c.Fine).All(r => r.All(glyph => glyph is ' ' or '█' or '▒')));

    [Fact]
    public void Nothing_is_no_chart() => BlockChart.Of([], 5, 40, fine: true).Should().BeEmpty();

    [Fact]
    public void Loads_worked_out() => BlockChart.Of([.. new[] { 20m, 30, 40, 30 }.Select((v, i) => new CoursePoint(First.PlusDays(i), v, v))], 4, 12, fine: false)
        .Should().Equal(
        "      ██",
        "   ██ ██ ██",
        "██ ██ ██ ██",
        "██ ██ ██ ██");

    [Fact]
    public void A_span_is_shaded_from_its_lower_end_to_its_upper_and_an_eighth_ends_a_fine_bar() =>
        BlockChart.Of([new(First, 20, 40), null, new(First, 15, 15)], 4, 3, fine: true).Should().Equal("▒", "▒", "█ ▄", "█ █");

    [Fact]
    public void Each_point_has_a_column_of_its_own_where_there_is_room() => Points.Sample(points =>
    {
        var told = points.OfType<CoursePoint>().ToList();

        return ChartColumns.Of(told, told.Count) is { ByWeek: false } columns && columns.Points.SequenceEqual(told);
    });

    [Fact]
    public void Where_there_is_none_a_column_is_a_week_and_shows_its_highest() => Gen.Select(Points, Gen.Int[1, 30]).Sample((points, most) =>
    {
        var told = points.OfType<CoursePoint>().ToList();
        var columns = ChartColumns.Of(told, most, weekly: true);
        var last = IsoWeek.Of(told[^1].Date).Monday;

        return columns.ByWeek && columns.Points.Count <= most && columns.Points[^1] is not null
            && columns.Points.Reverse().Select((p, i) => p?.Upper == told.Where(t => IsoWeek.Of(t.Date).Monday == last.PlusWeeks(-i)).Max(t => (decimal?)t.Upper)).All(same => same);
    });

    private static int Width((CoursePoint?[] Points, int Rows, int Room, bool Fine) c) => Math.Clamp(c.Room / c.Points.Length, 1, 3);

    private static char At(string row, int column) => column < row.Length ? row[column] : ' ';

    // In eighths of a row, read off the drawing.
    private static List<int> Heights((CoursePoint?[] Points, int Rows, int Room, bool Fine) c)
    {
        var rows = BlockChart.Of(c.Points, c.Rows, c.Room, c.Fine);
        return [.. c.Points.Select((_, bar) => rows.Sum(r => At(r, bar * Width(c)) is var glyph and not '▒' ? Eighths.IndexOf(glyph, StringComparison.Ordinal) : 8))];
    }
}
