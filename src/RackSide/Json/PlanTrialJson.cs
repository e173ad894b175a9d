using RackSide.Commands;
using RackSide.Training.Exercises;
using RackSide.Training.Forecasting;
using RackSide.Training.Measures;

namespace RackSide.Json;

/// <summary>The middle of many lifters, and a band that holds four of five.</summary>
internal sealed record LoadBandJson(MassJson Low, MassJson Middle, MassJson High);

/// <summary>A loaded lift of a trial.</summary>
internal sealed record TrialLiftJson(
    string Slot,
    ExerciseJson Exercise,
    LoadBandJson First,
    IReadOnlyList<LoadBandJson> Months,
    double Stalled,
    int? StalledInWeek,
    double KitSpent,
    int? KitSpentInWeek,
    JumpJson? Jump);

/// <summary>A step of over ten per cent in one go.</summary>
internal sealed record JumpJson(MassJson From, MassJson To, double Lifters);

/// <summary>What a slot without a load asks for.</summary>
internal sealed record TrialAimJson(ExerciseJson Exercise, int Target, string Unit);

/// <summary>A slot without a load.</summary>
internal sealed record TrialPracticeJson(string Slot, TrialAimJson First, TrialAimJson Last);

/// <summary>How long a training day takes, minutes.</summary>
internal sealed record TrialMinutesJson(string Day, int Low, int Middle, int High);

/// <summary>Working sets a week of a muscle group.</summary>
internal sealed record TrialSetsJson(string Muscle, double Sets);

/// <summary>What <c>rackside plan try --json</c> prints.</summary>
/// <param name="Plan">The plan's name.</param>
/// <param name="Kit">Whose kit, in words.</param>
/// <param name="Lifters">How many.</param>
/// <param name="Seed">Their seed.</param>
/// <param name="Weeks">How long.</param>
/// <param name="SessionsAWeek">Sessions done in a week.</param>
/// <param name="Lifts">The loaded lifts.</param>
/// <param name="Practice">The slots without a load.</param>
/// <param name="Minutes">Minutes a session.</param>
/// <param name="SetsAWeek">Working sets a week by muscle.</param>
/// <param name="Doubts">What to look at, a sentence each.</param>
/// <param name="Assumes">What it takes for granted.</param>
internal sealed record PlanTrialJson(
    string Plan,
    string Kit,
    int Lifters,
    int Seed,
    int Weeks,
    double SessionsAWeek,
    IReadOnlyList<TrialLiftJson> Lifts,
    IReadOnlyList<TrialPracticeJson> Practice,
    IReadOnlyList<TrialMinutesJson> Minutes,
    IReadOnlyList<TrialSetsJson> SetsAWeek,
    IReadOnlyList<string> Doubts,
    IReadOnlyList<string> Assumes)
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>That trial.</summary>
    public static PlanTrialJson Of(TriedPlan tried) => new(
        tried.Plan.Name,
        tried.KitFrom,
        tried.Trial.Lifters,
        tried.Seed,
        tried.Trial.Weeks,
        Math.Round(tried.Trial.SessionsAWeek, 3),
        [.. tried.Trial.Lifts.Select(Lift)],
        [.. tried.Trial.Practice.Select(p => new TrialPracticeJson(p.Slot, Aim(p.First), Aim(p.Last)))],
        [.. tried.Trial.Minutes.Select(d => new TrialMinutesJson(d.Day.Key, d.Minutes.Low, d.Minutes.Middle, d.Minutes.High))],
        [.. tried.Trial.SetsAWeek.Select(s => new TrialSetsJson(s.Group.Name(), Math.Round(s.Sets, 3)))],
        tried.Doubts,
        PlanTrial.Assumes);

    private static TrialLiftJson Lift(TrialLift lift) => new(
        lift.Slot,
        new ExerciseJson(lift.Exercise.Id, lift.Exercise.ShortName),
        Band(lift.First),
        [.. lift.Months.Select(Band)],
        Math.Round(lift.Stalled, 3),
        lift.StalledInWeek,
        Math.Round(lift.KitSpent, 3),
        lift.SpentInWeek,
        lift.Jump is { } jump ? new JumpJson(MassJson.Of(jump.From), MassJson.Of(jump.To), Math.Round(jump.Share, 3)) : null);

    private static LoadBandJson Band(Band<Mass> band) => new(MassJson.Of(band.Low), MassJson.Of(band.Middle), MassJson.Of(band.High));

    private static TrialAimJson Aim(TrialAim aim) => new(new ExerciseJson(aim.Exercise.Id, aim.Exercise.ShortName), aim.Target, aim.InSeconds ? "s" : "");
}
