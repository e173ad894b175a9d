using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using RackSide.Training.Schedule;

namespace RackSide.Training.Planning;

/// <summary>Joins calendar, progression, loading and kit into what a date asks for; nobody else joins them.</summary>
public static class Planner
{
    /// <summary>How many other exercises a slot offers: as many as one digit can name.</summary>
    public const int MostOthers = 9;

    /// <summary>The plan of a date.</summary>
    /// <param name="plan">The plan, on the lifter's weekdays.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="kit">What the gym owns.</param>
    /// <param name="lifter">Who trains.</param>
    /// <param name="history">All the lifter's sessions.</param>
    /// <param name="today">The date.</param>
    /// <param name="asked">A training day chosen by the lifter instead of what is due; null follows the calendar.</param>
    public static TodaysPlan For(
        Plan plan,
        Catalogue catalogue,
        GymKit kit,
        Lifter lifter,
        TrainingHistory history,
        LocalDate today,
        TrainingDay? asked = null)
    {
        var due = asked is null
            ? DueRule.For(plan, Past.Days(history), today)
            : DueRule.AskedFor(plan, Past.Days(history), today, asked);
        return due.Day is { } day
            ? Filled(due, day, catalogue, kit, lifter, history, today)
            : new TodaysPlan(due, null, [], Duration.Zero, []);
    }

    /// <summary>
    /// The prescriptions of a training day if it is done on that date, in the order of its slots; a slot that nothing in
    /// the kit can fill is left out.
    /// </summary>
    public static IReadOnlyList<Prescription> Prescriptions(
        TrainingDay day, Catalogue catalogue, GymKit kit, Lifter lifter, TrainingHistory history, LocalDate date) =>
    [
        .. from slot in day.Slots
           let exercise = Fill(slot, catalogue, kit, lifter)
           where exercise is not null
           select Prescribe(slot, exercise, kit, history, date),
    ];

    /// <summary>
    /// The exercise that fills a slot: the first it lists that the kit allows, or else the first of its motion that is told
    /// alike, in reps or in seconds. Head-down work is passed over for a lifter who is to avoid it.
    /// </summary>
    /// <returns>The exercise, or null where nothing in this kit can fill the slot.</returns>
    public static Exercise? Fill(Slot slot, Catalogue catalogue, GymKit kit, Lifter lifter) =>
        Fitting.For(slot, catalogue, kit, lifter).FirstOrDefault();

    /// <summary>Up to nine other exercises that can fill the slot: those it lists first, then others of its motion.</summary>
    /// <param name="slot">The slot.</param>
    /// <param name="current">The exercise that fills it now.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="kit">What the gym owns.</param>
    /// <param name="lifter">Who trains.</param>
    public static IReadOnlyList<Exercise> Others(
        Slot slot, Exercise current, Catalogue catalogue, GymKit kit, Lifter lifter) =>
        [.. Fitting.For(slot, catalogue, kit, lifter).Where(e => e.Id != current.Id).Take(MostOthers)];

    /// <summary>What a slot asks for with this exercise on a date; a swap in mid-session asks here too.</summary>
    public static Prescription Prescribe(
        Slot slot, Exercise exercise, GymKit kit, TrainingHistory history, LocalDate date)
    {
        var loads = Loads.For(exercise, kit);
        var known = KnownSets.For(history, slot, exercise, date);
        var decision = Progress.Next(slot, exercise, Past.Of(history, exercise, slot), loads, date, known);
        return new Prescription
        {
            Slot = slot.Key,
            Motion = exercise.Motion,
            Exercise = exercise.Id,
            Scheme = slot.Scheme,
            Targets = decision.Targets,
            Load = decision.Load,
            Ramp = decision.Load is { } work ? Ramps.For(slot.Ramp, work, exercise, loads!, kit) : [],
            Search = decision.Search,
            Rest = slot.Rest,
            Group = slot.Group,
            ChangeOver = slot.ChangeOver,
            Why = decision.Why,
        };
    }

    private static TodaysPlan Filled(
        DayDue due, TrainingDay day, Catalogue catalogue, GymKit kit, Lifter lifter, TrainingHistory history, LocalDate today)
    {
        var prescriptions = Prescriptions(day, catalogue, kit, lifter, history, today);
        return new TodaysPlan(
            due, day, prescriptions, TimeEstimate.Of(prescriptions, catalogue), PlateCheck.For(prescriptions, catalogue, kit))
        {
            LeftOut =
            [
                .. day.Slots.Where(s => prescriptions.All(p => p.Slot != s.Key))
                    .Select(s => $"{s.Key} is left out: nothing in this kit can fill it"),
            ],
        };
    }
}
