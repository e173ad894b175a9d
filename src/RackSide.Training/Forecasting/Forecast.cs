using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Forecasting;

/// <summary>
/// The main lifts in the weeks to come, with an honest span: many invented lifters who would have done what this one did
/// train on with the rules of the plan and the loads of the kit, and a span is told that is to hold what comes four times of five.
/// </summary>
/// <param name="From">The day it was made.</param>
/// <param name="Lifts">The main lifts that can be told, in the order of the plan.</param>
/// <param name="NotTold">Short names of main lifts that cannot: fewer than <see cref="FewestSessions"/> sessions, or help with no body weight known.</param>
/// <param name="Attendance">The share of its training days that the forecast expects to be done; 0 to 1.</param>
public sealed record Forecast(LocalDate From, IReadOnlyList<LiftForecast> Lifts, IReadOnlyList<string> NotTold, double Attendance)
{
    /// <summary>How many weeks are told.</summary>
    public const int Weeks = 12;

    /// <summary>How many invented lifters train on.</summary>
    public const int Runs = 200;

    /// <summary>
    /// The share of the runs that a span holds. Loads come in steps, so a span holds more of what comes than of the runs; with
    /// this share four spans of five held what came of invented lifters (<c>ForecastTests</c>).
    /// </summary>
    private const double RunsHeld = 0.73;

    /// <summary>How many there are to choose them from.</summary>
    private const int Guesses = 3 * Runs;

    /// <summary>A lift done less often is not forecast: the spans would be those of anybody.</summary>
    public const int FewestSessions = 3;

    /// <summary>What was done longer ago says little of today.</summary>
    private const int SessionsLookedAt = 24;

    /// <summary>What it takes for granted, in plain words.</summary>
    public static IReadOnlyList<string> Assumes { get; } =
    [
        "you train about as often as lately, eat and sleep enough, and stay well",
        "the plan, its rules and this kit stay as they are",
        "you grow as beginners do: fast, then slower; nobody can know how far",
    ];

    /// <summary>Makes it.</summary>
    /// <param name="plan">The plan, on the lifter's weekdays.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="kit">What the gym owns.</param>
    /// <param name="lifter">Whose forecast.</param>
    /// <param name="history">All the lifter did and told.</param>
    /// <param name="bodyWeight">The lifter's body weight, for lifts with help or an added load; null where it is not known.</param>
    /// <param name="today">The date.</param>
    /// <param name="chance">Each call gives a number from 0 up to 1; the same numbers give the same forecast.</param>
    /// <param name="done">Told after each lift, with how many of how many; null for nobody.</param>
    public static Forecast For(
        Plan plan,
        Catalogue catalogue,
        GymKit kit,
        Lifter lifter,
        TrainingHistory history,
        Mass? bodyWeight,
        LocalDate today,
        Func<double> chance,
        Action<int, int>? done = null)
    {
        var dates = DueRule.Ahead(plan, history.Days, today, 7 * Weeks, Past.Away(history))
            .Where(d => d is { Kind: DueKind.Train, Day.Kind: DayKind.Strength }).ToList();
        var attendance = Attending.Share(plan, history, today);
        var lifts = MainSlots(dates, catalogue, kit, lifter, history).ToList();
        List<LiftForecast> told = [];
        for (var i = 0; i < lifts.Count; i++)
        {
            if (One(lifts[i], dates, history, bodyWeight, today, attendance, chance) is { } forecast)
            {
                told.Add(forecast);
            }

            done?.Invoke(i + 1, lifts.Count);
        }

        return new Forecast(
            today, told, [.. lifts.Where(l => told.All(t => (t.Slot, t.Exercise) != (l.Slot.Key, l.Exercise.Id))).Select(l => l.Exercise.ShortName)], attendance);
    }

    private static IEnumerable<ForecastLift> MainSlots(
        IReadOnlyList<DayAhead> dates, Catalogue catalogue, GymKit kit, Lifter lifter, TrainingHistory history) =>
        from day in dates.Select(d => d.Day!).DistinctBy(d => d.Key)
        from slot in day.Slots
        where MainLifts.Has(slot.Motion) && slot.Scheme is Scheme.Fixed or Scheme.Range
        let exercise = Planner.Fill(slot, catalogue, kit, lifter)
        where exercise is not null
        let loads = Loads.For(exercise, kit)
        where loads is not null
        group (slot, exercise, loads) by (slot.Key, exercise.Id) into same
        select new ForecastLift(same.First().slot, same.First().exercise, same.First().loads);

    private static LiftForecast? One(
        ForecastLift lift, IReadOnlyList<DayAhead> dates, TrainingHistory history, Mass? bodyWeight, LocalDate today, double attendance, Func<double> chance)
    {
        var past = Past.Of(history, lift.Exercise, lift.Slot).Where(p => p.Sets.Any(s => s.Set.Load is not null)).ToList();
        if (past.Count < FewestSessions || lift.Lifted(bodyWeight) is not { } lifted)
        {
            return null;
        }

        var guesses = LiftBelief.From([.. past.TakeLast(SessionsLookedAt)], lifted, Guesses, chance).Where((_, i) => i % (Guesses / Runs) == 0);
        var days = dates.Where(d => d.Day!.Slots.Any(s => s.Key == lift.Slot.Key)).Select(d => d.Date).ToList();
        var meanwhile = Progression.Meanwhile.Of(history, lift.Exercise.Motion, today);
        var runs = guesses.Select(g => new ForecastRun(lift, lifted, past, meanwhile).Loads(g, days, today, Weeks, attendance, chance)).ToList();
        return new LiftForecast(lift.Slot.Key, lift.Exercise.Id, lift.Exercise.ShortName, runs[0].Now,
            [.. Enumerable.Range(0, Weeks).Select(w => Span(today.PlusDays((7 * (w + 1)) - 1), [.. runs.Select(r => r.Weeks[w]).OrderBy(lifted)], lifted))]);
    }

    /// <summary>The narrowest span that holds the runs it must, of equal ones the one nearest the middle.</summary>
    private static LoadSpan Span(LocalDate until, IReadOnlyList<Mass> sorted, Func<Mass, double> lifted)
    {
        var held = (int)Math.Ceiling(sorted.Count * RunsHeld);
        var first = Enumerable.Range(0, sorted.Count - held + 1)
            .OrderBy(i => lifted(sorted[i + held - 1]) - lifted(sorted[i]))
            .ThenBy(i => Math.Abs((2 * i) - (sorted.Count - held)))
            .First();
        return new(until, sorted[first], sorted[sorted.Count / 2], sorted[first + held - 1]);
    }
}
