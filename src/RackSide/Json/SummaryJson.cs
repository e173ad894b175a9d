using RackSide.Commands;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;

namespace RackSide.Json;

/// <summary>A lift of the week.</summary>
internal sealed record LiftJson(
    string Slot, ExerciseJson Exercise, MassJson? Began, MassJson? Now, MassJson Next, string Word, int MissesInARow);

/// <summary>A total of the week.</summary>
internal sealed record TotalJson(string Name, int Done, int Asked);

/// <summary>Working sets of a muscle group, an estimate: a set counts half where the group is trained besides.</summary>
internal sealed record MuscleJson(string Muscle, int Direct, int Indirect, decimal Counted);

/// <summary>Working sets that push and that pull.</summary>
internal sealed record PushPullJson(int Push, int Pull);

/// <summary>Body weight of the week.</summary>
internal sealed record BodyWeightJson(MassJson Mean, MassJson? Change, MassJson MostGain);

/// <summary>Sleep of the week.</summary>
internal sealed record WeekSleepJson(int MeanMinutes, int Nights, bool UnderFloor);

/// <summary>What <c>rackside summary --json</c> prints for a week without a summary.</summary>
internal sealed record NoWeekJson(string? Lifter, string Week, string Note)
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>That week and why there is none.</summary>
    public static NoWeekJson Of(Lifter lifter, IsoWeek week, string note) =>
        new(lifter.Name.Length > 0 ? lifter.Name : null, WeekEntry.Text(week), note);
}

/// <summary>What <c>rackside summary --json</c> prints.</summary>
internal sealed record SummaryJson
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>Whose week; null where nobody has joined.</summary>
    public required string? Lifter { get; init; }

    /// <summary>The ISO week.</summary>
    public required string Week { get; init; }

    /// <summary>Its Monday.</summary>
    public required string From { get; init; }

    /// <summary>Its Sunday.</summary>
    public required string To { get; init; }

    /// <summary>The training days done.</summary>
    public required IReadOnlyList<DatedDayJson> Done { get; init; }

    /// <summary>How many the plan has in a week.</summary>
    public required int Planned { get; init; }

    /// <summary>The loaded lifts.</summary>
    public required IReadOnlyList<LiftJson> Lifts { get; init; }

    /// <summary>Working sets and holds that met their target.</summary>
    public required int SetsOnTarget { get; init; }

    /// <summary>Working sets and holds done.</summary>
    public required int Sets { get; init; }

    /// <summary>Seconds held.</summary>
    public required int HoldSeconds { get; init; }

    /// <summary>Minutes trained, from the first page of each session to its last set.</summary>
    public required int MinutesTrained { get; init; }

    /// <summary>Totals.</summary>
    public required IReadOnlyList<TotalJson> Totals { get; init; }

    /// <summary>Working sets by muscle group.</summary>
    public required IReadOnlyList<MuscleJson> MuscleSetsEstimated { get; init; }

    /// <summary>About how many sets a muscle group wants in a week where size is the aim.</summary>
    public int SetsAdvisedForSize { get; } = MuscleSets.AboutEnough;

    /// <summary>Push against pull.</summary>
    public required PushPullJson PushPull { get; init; }

    /// <summary>Reps times load, one mass for each unit that was loaded.</summary>
    public required IReadOnlyList<MassJson> VolumeLoad { get; init; }

    /// <summary>The body's own mass moved in reps, an estimate; null where none can be told.</summary>
    public required MassJson? BodyCarriedEstimated { get; init; }

    /// <summary>Body weight, or null.</summary>
    public required BodyWeightJson? BodyWeight { get; init; }

    /// <summary>Sleep of the nights that ended in the week, or null where none was told.</summary>
    public required WeekSleepJson? Sleep { get; init; }

    /// <summary>At most two sentences.</summary>
    public required IReadOnlyList<string> Conclusions { get; init; }

    /// <summary>The next training day.</summary>
    public required DatedDayJson Next { get; init; }

    /// <summary>That week.</summary>
    public static SummaryJson Of(Lifter lifter, WeekSummary week) => new()
    {
        Lifter = lifter.Name.Length > 0 ? lifter.Name : null,
        Week = WeekEntry.Text(week.Week),
        From = DatedDayJson.Iso(week.Week.Monday),
        To = DatedDayJson.Iso(week.Week.Sunday),
        Done = [.. week.Done.Select(d => DatedDayJson.Of(d.Date, d.Name))],
        Planned = week.Planned,
        Lifts = [.. week.Lifts.Select(Lift)],
        SetsOnTarget = week.Work.SetsOnTarget,
        Sets = week.Work.Sets,
        HoldSeconds = week.Work.HoldSeconds,
        MinutesTrained = (int)Math.Round(week.Work.Trained.TotalMinutes),
        Totals = [.. week.Work.Totals.Select(t => new TotalJson(t.Name, t.Done, t.Asked))],
        MuscleSetsEstimated = [.. week.Muscles.Select(m => new MuscleJson(m.Group.Name(), m.Direct, m.Indirect, m.Counted))],
        PushPull = new(week.Balance.Push, week.Balance.Pull),
        BodyCarriedEstimated = week.BodyCarried is { } carried ? MassJson.Of(carried) : null,
        VolumeLoad = [.. week.VolumeLoad.Select(MassJson.Of)],
        BodyWeight = week.Body is { } body ? new(MassJson.Of(body.Mean), MassJson.Of(body.Change), MassJson.Of(body.Cap)) : null,
        Sleep = week.Sleep is { } sleep ? new((int)Math.Round(sleep.Mean.TotalMinutes), sleep.Nights, sleep.UnderFloor) : null,
        Conclusions = week.Conclusions,
        Next = DatedDayJson.Of(week.Next, week.NextDay.Name),
    };

    private static LiftJson Lift(LiftLine line) => new(
        line.Slot,
        new ExerciseJson(line.Exercise, line.Name),
        MassJson.Of(line.Began),
        MassJson.Of(line.Now),
        MassJson.Of(line.Next),
        line.Word,
        line.Misses);
}
