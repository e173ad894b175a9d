using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;

namespace RackSide.Training.Forecasting;

/// <summary>
/// What a coach should look at before anybody lifts, a sentence each: what the pattern, the kit and the trial show. It warns
/// and refuses nothing, because a coach may have reasons. All its limits: common practice, no source, except the step (ACSM
/// 2009: 2 to 10 per cent).
/// </summary>
public static class PlanDoubts
{
    /// <summary>The share of lifters from which something is told.</summary>
    private const double ManyLifters = 0.1;

    /// <summary>Working sets a week under which a large muscle group is told as hardly trained.</summary>
    private const double FewSets = 2;

    private static readonly (string Name, Motion[] Motions)[] Wanted =
    [
        ("squat or hinge", [Motion.Squat, Motion.Hinge]),
        ("horizontal pull", [Motion.HorizontalPull]),
        ("horizontal push", [Motion.HorizontalPush]),
        ("vertical pull", [Motion.VerticalPull]),
        ("vertical push", [Motion.VerticalPush]),
        ("core brace", [Motion.CoreBrace]),
    ];

    private static readonly MuscleGroup[] Large =
        [MuscleGroup.Quadriceps, MuscleGroup.Glutes, MuscleGroup.Hamstrings, MuscleGroup.Back, MuscleGroup.Chest, MuscleGroup.Shoulders];

    /// <summary>The doubts about a plan in a gym, the gravest first.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="kit">What the gym owns.</param>
    /// <param name="trial">How it went.</param>
    /// <param name="time">The time there is for a session.</param>
    public static IReadOnlyList<string> Of(Plan plan, Catalogue catalogue, GymKit kit, PlanTrial trial, Duration time) =>
    [
        .. InARow(plan),
        .. trial.NeverDone.Select(n => NeverDone(n.Day, n.Slot, catalogue, kit)),
        .. LeftOut(plan),
        .. TooLong(trial, time),
        .. TooLarge(trial),
        .. Spent(trial),
        .. HardlyTrained(trial),
        .. plan.Days.SelectMany(day => StandIns.For(day, catalogue, kit, Nobody).Where(s => s.Instead is not null).Select(s => $"{day.Name}: {s.Text}")).Distinct(),
    ];

    private static string NeverDone(TrainingDay day, Slot slot, Catalogue catalogue, GymKit kit) =>
        StandIns.For(day, catalogue, kit, Nobody).FirstOrDefault(s => s.Slot == slot.Key && s.Instead is null) is { } standIn ? $"{day.Name}: {standIn.Text}"
        : $"{day.Name}: {slot.Key} is never done: nothing in this kit fills it, or it waits for a hold that no other slot leads to";

    private static Lifter Nobody { get; } = new("", "", MassUnit.Kilogram, default);

    /// <summary>Strength days next to each other; a plan file cannot have them, a plan made otherwise could.</summary>
    private static IEnumerable<string> InARow(Plan plan)
    {
        var round = plan.Rolls ? plan.Rolling : [.. Enumerable.Range(1, 7).Select(n => plan.Week.GetValueOrDefault((IsoDayOfWeek)n))];
        bool Strength(int day) => round[day % round.Count] is { } key && plan.Day(key)?.Kind == DayKind.Strength;
        return Enumerable.Range(0, round.Count).Any(i => Strength(i) && Strength(i + 1))
            ? ["two strength days in a row: put a day of rest between them"]
            : [];
    }

    private static IEnumerable<string> LeftOut(Plan plan)
    {
        var asked = plan.Days.SelectMany(d => d.Slots).Select(s => s.Motion).ToHashSet();
        return Wanted.Where(w => !w.Motions.Any(asked.Contains)).Select(w => $"no slot asks for a {w.Name}");
    }

    private static IEnumerable<string> TooLong(PlanTrial trial, Duration time) => trial.Minutes
        .Where(d => d.Minutes.High > time.TotalMinutes)
        .Select(d => $"{d.Day.Name} takes {d.Minutes.Middle} min, up to {d.Minutes.High}, of {time.TotalMinutes:0} there are");

    private static IEnumerable<string> TooLarge(PlanTrial trial) => One(
        "steps over 10 % at once",
        trial.Lifts.Where(l => l.Jump is { Share: >= ManyLifters }).GroupBy(l => $"{l.Jump!.Value.From} to {l.Jump.Value.To}"),
        "; smaller plates or dumbbells would help");

    private static IEnumerable<string> Spent(PlanTrial trial) => One(
        "no harder load in this kit", trial.Lifts.Where(l => l.KitSpent >= ManyLifters).GroupBy(l => $"from week {l.SpentInWeek}"), "");

    private static IEnumerable<string> One(string told, IEnumerable<IGrouping<string, TrialLift>> lifts, string help)
    {
        var some = lifts.Select(alike => $"{string.Join(", ", alike.Select(l => l.Slot))} {alike.Key}").ToList();
        return some.Count > 0 ? [$"{told}, for a lifter in ten or more: {string.Join("; ", some)}{help}"] : [];
    }

    private static IEnumerable<string> HardlyTrained(PlanTrial trial) => trial.SetsAWeek
        .Where(s => Large.Contains(s.Group) && s.Sets < FewSets)
        .Select(s => s.Sets == 0 ? $"no set trains the {s.Group.Name()}" : FormattableString.Invariant($"{s.Group.Name()}: only {s.Sets:0.0} sets a week"));
}
