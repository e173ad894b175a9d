using System.Globalization;
using RackSide.Training.Body;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;

namespace RackSide.Pages.Rack;

/// <summary>
/// The week in words under its lifts. A narrow page begins with what the week comes to and what is next, and puts short words in few lines;
/// the weekly sets come last, because they are what a small page can do without.
/// </summary>
internal static class WeekNotes
{
    private const int Narrow = 52;

    /// <summary>The lines, each of at most so many columns.</summary>
    public static IReadOnlyList<string> Of(WeekSummary week, int width) =>
    [
        .. width > Narrow
            ? [.. Work(week.Work), .. week.Body is { } b ? [Wide(b)] : Array.Empty<string>(), .. week.Sleep is { } s ? [$"sleep           {s.Text}"] : Array.Empty<string>(), .. week.Conclusions, Next(week)]
            : NarrowOf(week, width),
        .. MuscleLines.Of(week.Muscles, week.Balance, width),
        .. week.Stage,
    ];

    private static IEnumerable<string> NarrowOf(WeekSummary week, int width) =>
    [
        .. week.Conclusions.Count == 0 ? [] : Frame.Wrap(string.Join(' ', week.Conclusions), width),
        Next(week),
        $"on target {week.Work.SetsOnTarget} of {week.Work.Sets}{Held(week.Work, ", ")}{Trained(week.Work, ", ")}",
        .. Body(week) is { Length: > 0 } body ? [body] : Array.Empty<string>(),
        .. week.Work.Totals.Select(t => $"{t.Name.ToLowerInvariant()} {t.Done} of {t.Asked} in all"),
    ];

    private static string Next(WeekSummary week) => $"next: {week.Next.Short()}, {week.NextDay.Name}";

    private static IEnumerable<string> Work(WeekWork work) =>
    [
        $"sets on target  {work.SetsOnTarget} of {work.Sets}{Held(work, "   ")}{Trained(work, "   ")}",
        .. work.Totals.Select(t => $"{t.Name.ToLowerInvariant(),-15} {t.Done} of {t.Asked} in all"),
    ];

    private static string Held(WeekWork work, string before) => work.HoldSeconds > 0 ? $"{before}holds {work.HoldSeconds} s" : "";

    private static string Trained(WeekWork work, string before) =>
        (int)Math.Round(work.Trained.TotalMinutes) is var minutes and > 0 ? $"{before}trained {minutes} min" : "";

    private static string Wide(Training.Summary.BodyLine body) =>
        $"body weight     {Tenth(body.Mean)} {body.Mean.Symbol}{(body.Change is { } c ? $", {Signed(c)} on last week (at most +{Hundredth(body.Cap)})" : ", mean of the week")}";

    private static string Body(WeekSummary week) => string.Join("; ", new[]
    {
        week.Body is { } body ? $"weight {Tenth(body.Mean)} {body.Mean.Symbol}{(body.Change is { } c ? $", {Signed(c)} (max +{Hundredth(body.Cap)})" : "")}" : null,
        week.Sleep is { } sleep ? $"sleep {Readiness.Text(sleep.Mean)}" : null,
    }.OfType<string>());

    private static string Tenth(Mass mass) => mass.Amount.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Hundredth(Mass mass) => mass.Amount.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Signed(Mass mass) => mass.Amount.ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture);
}
