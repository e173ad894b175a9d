using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Progression;

namespace RackSide.Training.Planning;

/// <summary>
/// Tells when the fast steps of a beginning are over, and what usually follows, in general words. Common practice, no
/// source: it is over when more than half of the main lifts, and two at least, have stopped climbing. A lift has stopped
/// where two deloads in half a year did not take it above where it stalled, or where six weeks of training brought no more
/// than the smallest step of the kit (of a range of reps, none). Nothing is said in the first twelve weeks.
/// </summary>
public static class MovingOn
{
    private const int FirstDays = 12 * 7, HalfAYear = 182, SomeWeeks = 6 * 7, EnoughSessions = 8;

    private static readonly string[] Told =
        ["The fast steps of a beginner are behind you.", "Next: heavy and light days in turn; ask a coach."];

    /// <summary>The lines to show, or none.</summary>
    /// <param name="history">All the lifter's sessions.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="kit">What the gym owns.</param>
    /// <param name="today">The date.</param>
    public static IReadOnlyList<string> Lines(TrainingHistory history, Catalogue catalogue, GymKit kit, LocalDate today)
    {
        if (history.First is not { } first || Period.DaysBetween(first, today) < FirstDays)
        {
            return [];
        }

        var lifts = Lifts(history, catalogue, today);
        var stopped = lifts.Count(e => HasStopped([.. history.Of(e.Id).Where(p => p.Date <= today)], e, kit, today));
        return stopped >= 2 && 2 * stopped > lifts.Count ? Told : [];
    }

    private static List<Exercise> Lifts(TrainingHistory history, Catalogue catalogue, LocalDate today) =>
    [
        .. history.Sessions
            .Where(s => s.Head.Kind == DayKind.Strength && s.Date <= today && Period.DaysBetween(s.Date, today) <= SomeWeeks)
            .SelectMany(s => s.Prescriptions)
            .Where(MainLifts.Is)
            .Select(p => p.Exercise)
            .Distinct()
            .Select(catalogue.Find)
            .OfType<Exercise>(),
    ];

    private static bool HasStopped(List<Performance> done, Exercise exercise, GymKit kit, LocalDate today)
    {
        List<Performance> Within(int days) => [.. done.Where(p => Period.DaysBetween(p.Date, today) <= days)];
        return DeloadsInVain(Within(HalfAYear), exercise) || OnlySmallSteps(Within(SomeWeeks), exercise, kit);
    }

    /// <summary>Two deloads, and since the last no load harder than before it.</summary>
    private static bool DeloadsInVain(List<Performance> done, Exercise exercise)
    {
        var deloads = done.Where((p, i) => IsDeload(p) && (i == 0 || !IsDeload(done[i - 1]))).ToList();
        if (deloads.Count < 2)
        {
            return false;
        }

        var last = done.IndexOf(deloads[^1]);
        return Hardest(done.Take(last), exercise) is { } before
            && !LoadUsed.IsHarder(Hardest(done.Skip(last), exercise), before, exercise)
            && Progress.MissesInARow(exercise, done) > 0;
    }

    private static bool OnlySmallSteps(List<Performance> done, Exercise exercise, GymKit kit) =>
        done.Count >= EnoughSessions && !done.Any(IsLighter)
        && LoadUsed.Of(done[0], exercise) is { } first && LoadUsed.Of(done[^1], exercise) is { } now
        && Loads.For(exercise, kit) is { } loads
        && !LoadUsed.IsHarder(now, Allowed(first, done[^1], loads, exercise), exercise);

    private static Mass Allowed(Mass first, Performance last, ReachableLoads loads, Exercise exercise) =>
        last.Asked.Scheme is Scheme.Range ? first
        : (exercise.LoadType == LoadType.Assisted ? loads.Below(first) : loads.Above(first)) ?? first;

    private static bool IsDeload(Performance p) => p.Asked.Why.Code is Reasons.ThirdMiss or Reasons.LightWeek;

    /// <summary>Whether a day was made lighter for a reason that says nothing of the strength.</summary>
    private static bool IsLighter(Performance p) => p.Asked.Why.Code is Reasons.LayOff or Reasons.Sore or Reasons.ClimbBack;

    private static Mass? Hardest(IEnumerable<Performance> done, Exercise exercise) => done
        .Select(p => LoadUsed.Of(p, exercise))
        .Aggregate((Mass?)null, (best, load) => best is null || LoadUsed.IsHarder(load, best, exercise) ? load : best);
}
