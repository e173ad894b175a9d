using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Progression;

namespace RackSide.Training.Forecasting;

/// <summary>The middle of some values and a band that holds four of five of them; the outer ten in a hundred on each side are left out.</summary>
/// <param name="Low">Its lower end.</param>
/// <param name="Middle">The median.</param>
/// <param name="High">Its upper end.</param>
public sealed record Band<T>(T Low, T Middle, T High)
{
    /// <summary>That of some values.</summary>
    /// <param name="values">At least one.</param>
    /// <param name="by">What they are put in order by.</param>
    public static Band<T> Of<TKey>(IEnumerable<T> values, Func<T, TKey> by)
    {
        List<T> sorted = [.. values.OrderBy(by)];
        return new(sorted[sorted.Count / 10], sorted[sorted.Count / 2], sorted[sorted.Count - 1 - (sorted.Count / 10)]);
    }
}

/// <summary>What became of a loaded lift in a trial.</summary>
/// <param name="Slot">Its slot's key.</param>
/// <param name="Exercise">The exercise that filled it.</param>
/// <param name="First">The load of the first session.</param>
/// <param name="Months">The load last used up to the end of each month, of those who did it; the first month first.</param>
/// <param name="Stalled">The share of lifters whose misses made a load lighter, once or more; 0 to 1.</param>
/// <param name="StalledInWeek">The week of the first of it, the middle of those lifters; null where there is none.</param>
/// <param name="KitSpent">The share of lifters who earned a harder load that the kit does not have; 0 to 1.</param>
/// <param name="SpentInWeek">The week of the first of it, the middle of those lifters.</param>
public sealed record TrialLift(
    string Slot,
    Exercise Exercise,
    Band<Mass> First,
    IReadOnlyList<Band<Mass>> Months,
    double Stalled,
    int? StalledInWeek,
    double KitSpent,
    int? SpentInWeek)
{
    /// <summary>The first step of over ten per cent that most often was asked for at once, as from and to; null where nobody met one.</summary>
    public (Mass From, Mass To, double Share)? Jump { get; init; }
}

/// <summary>What became of a slot without a load: a hold, reps, a total or a ladder.</summary>
/// <param name="Slot">Its key.</param>
/// <param name="First">The exercise most lifters begin with, and what it asks of them.</param>
/// <param name="Last">The same at the end.</param>
public sealed record TrialPractice(string Slot, TrialAim First, TrialAim Last);

/// <summary>An exercise and what its first set asks for, in the middle of those who do it.</summary>
/// <param name="Exercise">The exercise of most lifters.</param>
/// <param name="Target">Reps, or seconds.</param>
/// <param name="InSeconds">Whether it is seconds.</param>
public sealed record TrialAim(Exercise Exercise, int Target, bool InSeconds);

/// <summary>A plan tried on many invented newcomers, before anybody lifts.</summary>
/// <param name="Lifters">How many.</param>
/// <param name="Weeks">How long.</param>
/// <param name="Lifts">The loaded lifts, in the order of the plan.</param>
/// <param name="Practice">The slots without a load.</param>
/// <param name="Minutes">How long each training day takes, in minutes.</param>
/// <param name="SetsAWeek">Working sets a week by muscle group, direct and half of the indirect; the mean.</param>
/// <param name="SessionsAWeek">Sessions done in a week; the mean.</param>
/// <param name="NeverDone">Slots that nobody ever did, each with its training day.</param>
public sealed record PlanTrial(
    int Lifters,
    int Weeks,
    IReadOnlyList<TrialLift> Lifts,
    IReadOnlyList<TrialPractice> Practice,
    IReadOnlyList<(TrainingDay Day, Band<int> Minutes)> Minutes,
    IReadOnlyList<(MuscleGroup Group, double Sets)> SetsAWeek,
    double SessionsAWeek,
    IReadOnlyList<(TrainingDay Day, Slot Slot)> NeverDone)
{
    /// <summary>A year.</summary>
    public const int WeeksOfAYear = 52;

    /// <summary>What it takes for granted, in plain words.</summary>
    public static IReadOnlyList<string> Assumes { get; } =
    [
        "newcomers of 50 to 100 kg who can squat 40 to 100 % of that once, and whose strength grows in time, by nothing or up to threefold; all of it is made up",
        "on one training day in ten nobody comes, and the calendar moves on as it would; nobody goes away, falls ill, is sore or lets the form slip",
        "totals, seconds in all and things to tick are done as asked",
        "minutes are reckoned from sets, rests and ramps at a usual pace",
    ];

    /// <summary>Gathers what many lifters did.</summary>
    /// <param name="plan">The plan they trained by.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="first">Their first day.</param>
    /// <param name="weeks">How long they trained.</param>
    /// <param name="lives">The sessions of each (<see cref="TrialYear.Live"/>); at least one lifter.</param>
    public static PlanTrial Of(Plan plan, Catalogue catalogue, LocalDate first, int weeks, IReadOnlyList<IReadOnlyList<TrialSession>> lives) => new(
        lives.Count,
        weeks,
        [.. TrialLifts.Of(plan, catalogue, first, weeks, lives)],
        [.. TrialPractices.Of(plan, catalogue, lives)],
        [.. MinutesOf(plan, lives)],
        [.. Sets(catalogue, lives, weeks)],
        lives.Sum(l => l.Count) / (double)(lives.Count * weeks),
        [.. NeverDoneOf(plan, lives)]);

    private static IEnumerable<(TrainingDay Day, Slot Slot)> NeverDoneOf(Plan plan, IReadOnlyList<IReadOnlyList<TrialSession>> lives)
    {
        var done = lives.SelectMany(l => l).SelectMany(s => s.Slots.Select(t => (s.Day.Key, t.Asked.Slot))).ToHashSet();
        return plan.Days.SelectMany(day => day.Slots.Where(s => !done.Contains((day.Key, s.Key))).Select(s => (day, s)));
    }

    private static IEnumerable<(TrainingDay Day, Band<int> Minutes)> MinutesOf(Plan plan, IReadOnlyList<IReadOnlyList<TrialSession>> lives) =>
        from day in plan.Days
        let took = lives.SelectMany(l => l).Where(s => s.Day.Key == day.Key).Select(s => (int)Math.Round(s.Estimate.TotalMinutes)).ToList()
        where took.Count > 0
        select (day, Band<int>.Of(took, m => m));

    /// <summary>As the week page counts them: a set with a rep done, half for a muscle trained besides (Pelland 2024, preprint).</summary>
    private static IEnumerable<(MuscleGroup Group, double Sets)> Sets(Catalogue catalogue, IReadOnlyList<IReadOnlyList<TrialSession>> lives, int weeks)
    {
        var byExercise = lives.SelectMany(l => l).SelectMany(s => s.Slots)
            .Where(s => s.Asked.Scheme is Scheme.Fixed or Scheme.Range)
            .GroupBy(s => s.Asked.Exercise)
            .Select(same => (Exercise: catalogue[same.Key], Sets: same.Sum(s => s.Done.Count(d => d > 0)) / (double)(lives.Count * weeks)))
            .ToList();
        return from @group in Enum.GetValues<MuscleGroup>()
               let direct = byExercise.Where(e => e.Exercise.Direct() == @group).Sum(e => e.Sets)
               let indirect = byExercise.Where(e => e.Exercise.Indirect().Contains(@group)).Sum(e => e.Sets)
               select (@group, direct + (indirect / 2));
    }
}
