using System.Globalization;
using RackSide.Training.Exercises;
using RackSide.Training.Forecasting;
using RackSide.Training.Measures;
using RackSide.Training.Safety;
using RackSide.Training.Summary;

namespace RackSide.Commands;

/// <summary>A plan tried, in plain lines of at most 80 columns.</summary>
internal static class PlanTrialText
{
    /// <summary>The months that a column is for.</summary>
    private static readonly int[] Shown = [1, 6, 12];

    /// <summary>The lines.</summary>
    public static IEnumerable<string> Lines(TriedPlan tried) =>
    [
        .. PlainText.Wrap($"\"{tried.Plan.Name}\": a year of {tried.Trial.Lifters} invented {(tried.Trial.Lifters == 1 ? "lifter" : "lifters")} (seed {tried.Seed})"),
        .. PlainText.Wrap($"kit: {tried.KitFrom}; {Inv($"{tried.Trial.SessionsAWeek:0.0}")} sessions a week were done"),
        .. Loads(tried.Trial),
        .. Practice(tried.Trial),
        .. Stalls(tried.Trial),
        .. Minutes(tried.Trial),
        .. Sets(tried.Trial),
        "",
        .. Doubts(tried.Doubts),
        "",
        "It takes for granted:",
        .. PlanTrial.Assumes.SelectMany(Item),
        .. PlainText.Wrap("It is arithmetic on invented lifters, no promise and no target: form and how a lifter feels decide. Middle is the middle lifter; the band holds four of five of them, not the one who trains here."),
        "",
        .. Cautions.All.SelectMany(c => PlainText.Wrap(c)),
    ];

    private static IEnumerable<string> Loads(PlanTrial trial) => trial.Lifts.Count == 0 ? [] :
    [
        "",
        "Load at first and at the end of a month: middle (band of four in five)",
        $"{"",-15}{"first",-10}{string.Concat(Shown.Select(m => $"{$"month {m}",-18}"))}".TrimEnd(),
        .. trial.Lifts.Select(l => $"{Name(l.Exercise),-15}{l.First.Middle,-10}{string.Concat(Shown.Select(m => $"{Load(l.Months[m - 1]),-18}"))}".TrimEnd()),
    ];

    private static string Load(Band<Mass> band) => band.Low == band.High ? band.Middle.ToString() : $"{band.Middle.Number} ({band.Low.Number}-{band.High.Number})";

    private static IEnumerable<string> Practice(PlanTrial trial) => trial.Practice.Count == 0 ? [] :
    [
        "",
        "Without a load: what the middle lifter is asked for",
        $"{"",-20}{"first",-30}after a year",
        .. trial.Practice.Select(p => $"{p.Slot[..Math.Min(p.Slot.Length, 19)],-20}{Aim(p.First),-30}{Aim(p.Last)}"),
    ];

    private static string Aim(TrialAim aim) => $"{Name(aim.Exercise)}, {aim.Target}{(aim.InSeconds ? " s" : "")}";

    private static IEnumerable<string> Stalls(PlanTrial trial) => trial.Lifts.Count == 0 ? [] :
    [
        "",
        "Stalls: misses that made a load lighter; and where the kit has no harder load",
        $"{"",-15}{"stalled",-12}{"first in",-14}{"kit spent",-12}first in",
        .. trial.Lifts.Select(l => $"{Name(l.Exercise),-15}{Percent(l.Stalled),-12}{Week(l.StalledInWeek),-14}{Percent(l.KitSpent),-12}{Week(l.SpentInWeek)}".TrimEnd()),
    ];

    private static string Week(int? week) => week is { } known ? Inv($"week {known}") : "-";

    private static string Percent(double share) => Inv($"{100 * share:0} %");

    private static IEnumerable<string> Minutes(PlanTrial trial) =>
    [
        "",
        "Minutes a session: middle (band)",
        .. trial.Minutes.Select(d => $"{d.Day.Name[..Math.Min(d.Day.Name.Length, 29)],-30}{d.Minutes.Middle} ({d.Minutes.Low}-{d.Minutes.High})"),
    ];

    private static IEnumerable<string> Sets(PlanTrial trial)
    {
        var sets = trial.SetsAWeek.Where(s => s.Sets > 0).Select(s => Inv($"{s.Group.Name()} {s.Sets:0.0}")).ToList();
        return sets.Count == 0 ? [] :
        [
            "",
            .. PlainText.Wrap($"Working sets a week by muscle, holds and totals not counted; an indirect set is half a one; about {MuscleSets.AboutEnough} where size is the aim:"),
            .. PlainText.Wrap(string.Join(", ", sets), margin: 2),
        ];
    }

    private static IEnumerable<string> Doubts(IReadOnlyList<string> doubts) => doubts.Count == 0
        ? ["No doubts."]
        : [$"{doubts.Count} {(doubts.Count == 1 ? "doubt" : "doubts")}, for the coach to weigh:", .. doubts.SelectMany(Item)];

    private static IEnumerable<string> Item(string text) => PlainText.Wrap(text, margin: 2).Select((line, i) => i == 0 ? $"- {line.TrimStart()}" : line);

    private static string Name(Exercise exercise) => exercise.ShortName.ToLowerInvariant();

    private static string Inv(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
