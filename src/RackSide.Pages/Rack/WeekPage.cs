using System.Globalization;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;

namespace RackSide.Pages.Rack;

/// <summary>
/// The week at one look: a bar a lift on one common scale (full block where it began, shade what came since), the load
/// now, the load next and one word.
/// </summary>
internal static class WeekPage
{
    /// <summary>A line of this width holds sets and holds, and no third thing.</summary>
    private const int Narrow = 52;

    /// <summary>Draws it below the top line; gives the row after it.</summary>
    public static int Draw(Canvas canvas, WeekSummary week)
    {
        var size = canvas.Size;
        Frame.Header(canvas, Title(week), $"{week.Done.Count} of {week.Planned} days done");
        var row = DrawLifts(canvas, week, Frame.Top(size));
        foreach (var line in Notes(week, size.Columns - (2 * Margin(size))).Take(Frame.Bottom(size) - 1 - row))
        {
            canvas.Write(Margin(size), row++, Frame.Fit(line, size.Columns - Margin(size)));
        }

        return row;
    }

    private static string Title(WeekSummary week) =>
        $"WEEK {week.Week.Number}   {week.Week.Monday.Short()[4..]} to {week.Week.Sunday.Short()[4..]}";

    private static int DrawLifts(Canvas canvas, WeekSummary week, int row)
    {
        if (week.Lifts.Count == 0)
        {
            return row;
        }

        var size = canvas.Size;
        canvas.WriteRight(size.Columns - 10, row, size.Compact ? "now    next" : "now     next", Look.Bold);
        if (!size.Compact)
        {
            canvas.Write(Margin(size), row, "working loads, first day to now", Look.Bold);
        }

        var heaviest = week.Lifts.Max(l => (l.Now ?? l.Next).Kilograms);
        var step = Frame.Bottom(size) - row - 7 >= 2 * week.Lifts.Count ? 2 : 1;
        row++;
        foreach (var lift in week.Lifts)
        {
            DrawLift(canvas, lift, row, heaviest);
            row += step;
        }

        return row + (step == 1 && Frame.Bottom(size) - row > 6 ? 1 : 0);
    }

    private static void DrawLift(Canvas canvas, LiftLine lift, int row, decimal heaviest)
    {
        var size = canvas.Size;
        canvas.Write(Margin(size), row, Frame.Fit(lift.Name.ToLowerInvariant(), 14));
        if (!size.Compact && heaviest > 0)
        {
            DrawBar(canvas, lift, row, heaviest, size.Columns - 16 - 32);
        }

        canvas.WriteRight(size.Columns - 18, row, lift.Now?.Number ?? "-");
        canvas.WriteRight(size.Columns - 10, row, lift.Next.ToString(), Look.Bold);
        canvas.Write(size.Columns - 9, row, lift.Word);
    }

    private static void DrawBar(Canvas canvas, LiftLine lift, int row, decimal heaviest, int room)
    {
        var (began, now) = (Cells(lift.Began), Cells(lift.Now));
        canvas.Fill(16, row, Math.Min(began, now), '█', Look.Now);
        canvas.Fill(16 + began, row, Math.Max(0, now - began), '▒', Look.Next);

        int Cells(Mass? mass) => (int)Math.Round((mass?.Kilograms ?? 0) / heaviest * room);
    }

    /// <summary>The weekly sets come last, because they are what a small page can do without.</summary>
    private static IEnumerable<string> Notes(WeekSummary week, int width)
    {
        var work = week.Work;
        var trained = (int)Math.Round(work.Trained.TotalMinutes);
        yield return $"sets on target  {work.SetsOnTarget} of {work.Sets}{(work.HoldSeconds > 0 ? $"   holds {work.HoldSeconds} s" : "")}{(trained > 0 && width > Narrow ? $"   trained {trained} min" : "")}";
        foreach (var total in work.Totals)
        {
            yield return $"{total.Name.ToLowerInvariant(),-15} {total.Done} of {total.Asked} in all";
        }

        if (week.Body is { } body)
        {
            yield return $"body weight     {Tenth(body.Mean)} {body.Mean.Symbol}{(body.Change is { } c ? $", {Signed(c)} on last week (at most +{body.Cap.Amount.ToString("0.##", CultureInfo.InvariantCulture)})" : ", mean of the week")}";
        }

        foreach (var sentence in week.Conclusions)
        {
            yield return sentence;
        }

        yield return $"next: {week.Next.Short()}, {week.NextDay.Name}";
        foreach (var line in MuscleLines.Of(week.Muscles, week.Balance, width))
        {
            yield return line;
        }
        foreach (var line in week.Stage)
        {
            yield return line;
        }
    }

    private static string Tenth(Mass mass) => mass.Amount.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Signed(Mass mass) => mass.Amount.ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture);

    private static int Margin(PageSize size) => size.Compact ? 0 : 1;
}
