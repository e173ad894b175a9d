using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;
using RackSide.Training.Strength;

namespace RackSide.Commands;

/// <summary>The sessions of an exercise in plain lines, the newest last, where the eye is when the prompt comes back.</summary>
/// <param name="catalogue">All exercises.</param>
/// <param name="asked">Whose sessions.</param>
/// <param name="count">How many there are.</param>
/// <param name="sessions">Those that are shown, oldest first.</param>
/// <param name="records">The records among all of them.</param>
internal sealed class HistoryText(
    Catalogue catalogue,
    ExerciseAsked asked,
    int count,
    IReadOnlyList<Performance> sessions,
    IReadOnlyList<(Exercise Exercise, IReadOnlyList<RepRecord> Records)> records)
{
    /// <summary>The lines, each of at most 80 columns.</summary>
    public IEnumerable<string> Lines() => sessions.Count == 0
        ? PlainText.Wrap($"{asked.Name}: nothing yet.")
        :
        [
            .. PlainText.Wrap($"{asked.Name}: {(count == 1 ? "one session" : $"{count} sessions")}"
                + (count > sessions.Count ? $"; the newest {sessions.Count} are shown, --all prints the others too" : "")),
            .. sessions.SelectMany(Session),
            .. records.SelectMany(r => Records(r.Exercise, r.Records)),
            .. Estimate(sessions[^1]),
        ];

    private IEnumerable<string> Records(Exercise exercise, IReadOnlyList<RepRecord> best) =>
    [
        "",
        .. PlainText.Wrap($"{(exercise.LoadType == LoadType.Assisted ? "Least help" : "Heaviest")} so far"
            + $"{(asked.Exercise is null ? $", {exercise.Name}" : "")}:"),
        .. PlainText.Wrap(
            string.Join("; ", best.Select(r => $"{AskedText.Load(r.Load, exercise)} x {r.Reps} ({r.Date.Short()} {r.Date.Year})")),
            margin: 2),
    ];

    private IEnumerable<string> Estimate(Performance last) =>
        catalogue.Find(last.Asked.Exercise) is { } exercise && StrengthEstimate.Of(last, exercise) is { } range
            ? ["", .. PlainText.Wrap(
                $"One rep, estimated from the last session: at least {Math.Floor(range.Lowest.Amount)} to {Math.Ceiling(range.Highest.Amount)} "
                + $"{range.Lowest.Symbol}, the span of seven formulas{(exercise.Motion == Motion.Hinge ? ", all probably low for this lift" : "")}. "
                + "Nothing to try without a qualified coach.")]
            : [];

    private IEnumerable<string> Session(Performance done)
    {
        var exercise = catalogue.Find(done.Asked.Exercise);
        var name = asked.Exercise is null ? $", {exercise?.Name ?? done.Asked.Exercise}" : "";
        return
        [
            "",
            .. PlainText.Wrap($"{done.Date.Short()} {done.Date.Year}{name}: {Outcome.Text(done)}"),
            .. PlainText.Wrap(string.Join("; ", Sets(done, exercise)), margin: 2),
            .. done.Notes.SelectMany(note => PlainText.Wrap($"noted: {note}", margin: 2)),
            .. PlainText.Wrap($"why then ({done.Asked.Why.Code}): {done.Asked.Why.Line}", margin: 2),
        ];
    }

    /// <summary>Neighbouring sets at one load together: <c>60 kg x 5, 5, 4 (form slipped)</c>.</summary>
    private static IEnumerable<string> Sets(Performance done, Exercise? exercise)
    {
        List<List<SetResult>> runs = [];
        foreach (var set in done.Sets)
        {
            if (runs.Count > 0 && runs[^1][0].Set.Load == set.Set.Load)
            {
                runs[^1].Add(set);
            }
            else
            {
                runs.Add([set]);
            }
        }

        return runs.Select(run => Run(run, exercise));
    }

    private static string Run(List<SetResult> run, Exercise? exercise)
    {
        var counts = string.Join(", ", run.Select(s => $"{Pages.Rack.Words.Done(s)}{(s.FormSlipped ? " (form slipped)" : "")}"));
        return AskedText.Load(run[0].Set.Load, exercise) is { Length: > 0 } load ? $"{load} x {counts}"
            : $"{counts} {(run[0].Set.Kind is SetKind.Hold or SetKind.HeldShare ? "s" : "reps")}";
    }
}

/// <summary>Whether what was asked for was done.</summary>
internal static class Outcome
{
    /// <summary>Whether every set asked for met its target with honest form, or the total was reached.</summary>
    public static bool Met(Performance done) => done.Asked.Scheme is Scheme.Total or Scheme.Accumulate
        ? Sum(done) >= done.Asked.Targets.Sum()
        : done.Sets.Count >= done.Asked.Targets.Count && done.Sets.All(s => s.OnTarget);

    /// <summary>The same in words, after what was asked for.</summary>
    public static string Text(Performance done)
    {
        var told = done.Asked.Scheme is Scheme.Total or Scheme.Accumulate
            ? $"{Sum(done)}{(done.Asked.Scheme is Scheme.Accumulate ? " s" : "")} done"
            : Met(done) ? "all met" : $"{done.Sets.Count(s => s.OnTarget)} of {done.Asked.Targets.Count} sets met";
        return $"asked {AskedText.Sets(done.Asked)}, {told}{(done.CutShort ? ", the rest left out" : "")}";
    }

    private static int Sum(Performance done) => done.Sets.Sum(s => s.Set.Done);
}
