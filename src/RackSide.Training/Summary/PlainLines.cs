using System.Globalization;
using NodaTime;
using NodaTime.Text;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Training.Summary;

/// <summary>The week page in plain lines, the same under every culture, with no cursor and no colour.</summary>
internal static class PlainLines
{
    /// <summary>The longest line.</summary>
    private const int Width = 72;

    /// <summary>Where a line of many numbers is broken, so that a narrow terminal breaks no word.</summary>
    private const int NarrowWidth = 50;

    /// <summary>More lifts than these make no page that is taken in at one look.</summary>
    private const int MostLifts = 7;

    private static readonly LocalDatePattern DayMonth = LocalDatePattern.CreateWithInvariantCulture("d MMM");

    public static IReadOnlyList<string> Of(WeekSummary s)
    {
        List<string> lines = [Head(s), $"done: {Done(s)}", .. s.Lifts.Take(MostLifts).Select(Lift)];
        lines.Add(Work(s.Work));
        lines.AddRange(s.Work.Totals.Select(t => Inv($"{t.Name}: {t.Done} of {t.Asked} in all")));
        lines.AddRange(s.BodyCarried is { } carried ? [Inv($"body carried in reps, an estimate: about {decimal.Round(carried.Amount / 10) * 10:0} {carried.Symbol}")] : []);
        lines.AddRange(MuscleLines.Of(s.Muscles, s.Balance, NarrowWidth));
        lines.AddRange(s.Body is { } body ? [Body(body)] : []);
        lines.AddRange(s.Sleep is { } sleep ? [$"sleep: {sleep.Text}"] : []);
        lines.AddRange(s.Conclusions);
        lines.AddRange(s.Stage);
        lines.Add($"next: {NextDay(s)}");
        return [.. lines.Select(l => l.Length <= Width ? l : $"{l[..(Width - 3)]}...")];
    }

    /// <summary>A mass at a hundredth, without trailing zeros: <c>0.45 kg</c>.</summary>
    public static string Short(Mass mass) => $"{mass.Amount.ToString("0.##", CultureInfo.InvariantCulture)} {mass.Symbol}";

    /// <summary>Names in a row: <c>a, b and c</c>.</summary>
    public static string And(IReadOnlyList<string> names) => names.Count < 2
        ? string.Concat(names)
        : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";

    private static string Head(WeekSummary s)
    {
        var (from, to) = (s.Week.Monday, s.Week.Sunday);
        var first = from.Month == to.Month ? Inv($"{from.Day}") : DayMonth.Format(from);
        var days = Inv($"{s.Done.Count} of {s.Planned} training days done");
        return Inv($"week {s.Week.Number} of {s.Week.Year}, {first} to {DayMonth.Format(to)}: {days}");
    }

    private static string Done(WeekSummary s) => s.Done.Count == 0
        ? "nothing yet"
        : string.Join(", ", s.Done.Select(d => $"{Day(d.Date)} {d.Name}"));

    private static string Lift(LiftLine l) => l is { Now: { } now, Began: { } began }
        ? $"{l.Name,-14} {now,8} next {l.Next,8}: {l.Word}{(began == now ? "" : $" (from {began.Number})")}"
        : $"{l.Name,-14} new, begins at {l.Next}";

    private static string Work(WeekWork w)
    {
        var held = w.HoldSeconds == 0 ? "" : Inv($"; held for {w.HoldSeconds} s in all");
        return Inv($"sets on target: {w.SetsOnTarget} of {w.Sets}{held}{Trained(w)}");
    }

    private static string Trained(WeekWork w) => w.Trained < NodaTime.Duration.FromMinutes(1) ? "" : Inv($"; trained {(int)Math.Round(w.Trained.TotalMinutes)} min");

    private static string Body(BodyLine b)
    {
        var mean = Inv($"body weight, mean of the week: {b.Mean.Amount:0.0} {b.Mean.Symbol}");
        return b.Change is { } change
            ? Inv($"{mean}, {change.Amount:+0.0;-0.0;0.0} (at most +{Short(b.Cap)})")
            : mean;
    }

    private static string Day(LocalDate date) => date.Short()[..3];

    /// <summary>The next training day: <c>Wed 25 Nov, Skills day</c>.</summary>
    public static string NextDay(WeekSummary s) => $"{s.Next.Short()}, {s.NextDay.Name}";

    /// <summary>A text with its numbers as in every culture.</summary>
    public static string Inv(FormattableString text) => FormattableString.Invariant(text);
}
