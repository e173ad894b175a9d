namespace RackSide.Training.Summary;

/// <summary>
/// The week in so few and so narrow lines that they stand together on the smallest terminal a rack has, fifty columns and
/// fifteen rows, with the shell's prompt under them. What a smaller page can do without is left out, last first.
/// </summary>
internal static class FewLines
{
    /// <summary>The most lines.</summary>
    private const int Most = 12;

    /// <summary>The most columns of a line.</summary>
    private const int Width = 50;

    private const int MostLifts = 7;

    public static IReadOnlyList<string> Of(WeekSummary s)
    {
        List<string> first = [Head(s), .. s.Lifts.Take(MostLifts).Select(Lift), Work(s.Work)];
        var more = More(s).Where(l => l.Length <= Width).Take(Most - first.Count - 1);
        return [.. first.Concat(more).Append(PlainLines.Inv($"next: {PlainLines.NextDay(s)}")).Select(Fit)];
    }

    private static string Head(WeekSummary s) => PlainLines.Inv($"week {s.Week.Number} of {s.Week.Year}: {s.Done.Count} of {s.Planned} training days done");

    private static string Lift(LiftLine l) => l.Now is { } now
        ? $"{l.Name,-14} {now,8} next {l.Next,8}: {l.Word}"
        : $"{l.Name,-14} new, begins at {l.Next}";

    private static string Work(WeekWork w) => PlainLines.Inv($"sets on target: {w.SetsOnTarget} of {w.Sets}");

    private static IEnumerable<string> More(WeekSummary s) =>
    [
        .. s.Conclusions,
        .. s.Body is { } body ? [PlainLines.Inv($"body weight, mean: {body.Mean.Amount:0.0} {body.Mean.Symbol}")] : Array.Empty<string>(),
        .. s.Sleep is { } sleep ? [$"sleep: {sleep.Text}"] : Array.Empty<string>(),
        .. s.Stage,
        .. s.Work.Totals.Select(t => PlainLines.Inv($"{t.Name}: {t.Done} of {t.Asked} in all")),
    ];

    private static string Fit(string line) => line.Length <= Width ? line : $"{line[..(Width - 3)]}...";
}
