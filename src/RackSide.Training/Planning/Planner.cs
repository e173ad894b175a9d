using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using RackSide.Training.Schedule;
using RackSide.Training.Skills;

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
        TrainingDay? asked = null) => For(plan, catalogue, new KitLoads(kit), lifter, history, today, asked);

    /// <summary>The same with what the gym can load at hand, for whoever asks for many days: it is reckoned once.</summary>
    /// <inheritdoc cref="For(Plan, Catalogue, GymKit, Lifter, TrainingHistory, LocalDate, TrainingDay)"/>
    public static TodaysPlan For(
        Plan plan,
        Catalogue catalogue,
        KitLoads gym,
        Lifter lifter,
        TrainingHistory history,
        LocalDate today,
        TrainingDay? asked = null)
    {
        var due = asked is null
            ? DueRule.For(plan, history.Days, today, Past.Away(history))
            : DueRule.AskedFor(plan, history.Days, today, asked, Past.Away(history));
        return due.Day is { } day
            ? Filled(due, day, catalogue, gym, lifter, history, today)
            : new TodaysPlan(due, null, [], Duration.Zero, []);
    }

    /// <summary>The same plan with variants of the same motions drawn for variety; see <see cref="Play"/>.</summary>
    public static TodaysPlan Played(TodaysPlan todays, int seed, Catalogue catalogue, GymKit kit, Lifter lifter, TrainingHistory history, LocalDate today)
    {
        var drawn = Prescriptions(todays.Day!, catalogue, kit, lifter, history, today, seed);
        return todays with { Prescriptions = drawn, Estimate = TimeEstimate.Of(drawn, catalogue, LifterPace.Of(history)) };
    }

    /// <summary>The same plan in less time, with what is left out told; see <see cref="TimeBudget"/>.</summary>
    public static TodaysPlan Within(TodaysPlan todays, Duration time, Catalogue catalogue, GymKit kit, TrainingHistory history)
    {
        var trimmed = TimeBudget.Trim(todays.Prescriptions, catalogue, time, LifterPace.Of(history));
        return todays with
        {
            Prescriptions = trimmed.Kept,
            NoTimeFor = trimmed.NoTimeFor,
            Estimate = trimmed.Estimate,
            PlatesNeeded = PlateCheck.For(trimmed.Kept, catalogue, new KitLoads(kit)),
            LeftOut = [.. todays.LeftOut, .. NoTime(trimmed, catalogue, time)],
        };
    }

    private static IEnumerable<string> NoTime(TrimmedPlan trimmed, Catalogue catalogue, Duration time)
    {
        if (trimmed.NoTimeFor.Count > 0)
        {
            yield return $"no time for {string.Join(", ", trimmed.NoTimeFor.Select(p => catalogue[p.Exercise].ShortName.ToLowerInvariant()))}: left out, not missed";
        }

        if (trimmed.Kept.Where(p => p.SetsLeftOut > 0).ToList() is { Count: > 0 } fewer)
        {
            yield return $"fewer sets of {string.Join(", ", fewer.Select(p => catalogue[p.Exercise].ShortName.ToLowerInvariant()))}";
        }

        if (!trimmed.Fits)
        {
            yield return $"it takes longer than {time.TotalMinutes:0} min: the warm-up and the first lift are never cut";
        }
    }

    /// <summary>
    /// The prescriptions of a training day if it is done on that date, in the order of its slots; a slot that nothing in
    /// the kit can fill is left out. Where main lifts stall together the day begins a light week (see <see cref="LightWeeks"/>).
    /// </summary>
    /// <param name="day">The training day.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="kit">What the gym owns.</param>
    /// <param name="lifter">Who trains.</param>
    /// <param name="history">All the lifter's sessions.</param>
    /// <param name="date">The date.</param>
    /// <param name="play">A seed for play on a skills day: variants of the same motions are drawn by it; null for none.</param>
    public static IReadOnlyList<Prescription> Prescriptions(
        TrainingDay day, Catalogue catalogue, GymKit kit, Lifter lifter, TrainingHistory history, LocalDate date, int? play = null) =>
        Prescriptions(day, catalogue, new KitLoads(kit), lifter, history, date, play);

    internal static IReadOnlyList<Prescription> Prescriptions(
        TrainingDay day, Catalogue catalogue, KitLoads gym, Lifter lifter, TrainingHistory history, LocalDate date, int? play = null)
    {
        var filled = day.Slots.Select(slot => Filling.Of(slot, catalogue, gym, lifter, history, date)).OfType<Filling>()
            .Select(f => play is { } seed && day.Kind == DayKind.Skills ? f.Played(seed, catalogue, gym, lifter, history, date) : f)
            .ToList();
        var ordinary = InOrder(filled, gym, history, date);
        return LightWeeks.Why(day, ordinary, history, date) is { } light ? InOrder(filled, gym, history, date, light) : ordinary;
    }

    /// <summary>
    /// The exercise that fills a slot: the first it lists that the kit allows, or else the first of its motion that is told
    /// alike, in reps or in seconds. Head-down work is passed over for a lifter who is to avoid it.
    /// </summary>
    /// <param name="slot">The slot.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="kit">What the gym owns.</param>
    /// <param name="lifter">Who trains.</param>
    /// <param name="history">All the lifter's sessions, for what must have been held before; null for none.</param>
    /// <returns>The exercise, or null where nothing in this kit can fill the slot.</returns>
    public static Exercise? Fill(Slot slot, Catalogue catalogue, GymKit kit, Lifter lifter, TrainingHistory? history = null) =>
        Fitting.For(slot, catalogue, new KitLoads(kit), lifter, history ?? TrainingHistory.Empty).FirstOrDefault();

    /// <summary>Up to nine other exercises that can fill the slot: those it lists first, then others of its motion.</summary>
    /// <param name="slot">The slot.</param>
    /// <param name="current">The exercise that fills it now.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="kit">What the gym owns.</param>
    /// <param name="lifter">Who trains.</param>
    /// <param name="history">All the lifter's sessions, for what must have been held before; null for none.</param>
    public static IReadOnlyList<Exercise> Others(
        Slot slot, Exercise current, Catalogue catalogue, GymKit kit, Lifter lifter, TrainingHistory? history = null) =>
        [.. Fitting.For(slot, catalogue, new KitLoads(kit), lifter, history ?? TrainingHistory.Empty).Where(e => e.Id != current.Id).Take(MostOthers)];

    /// <summary>What a slot asks for with this exercise on a date; a swap in mid-session asks here too.</summary>
    /// <param name="slot">The slot.</param>
    /// <param name="exercise">The exercise that fills it.</param>
    /// <param name="kit">What the gym owns.</param>
    /// <param name="history">All the lifter's sessions.</param>
    /// <param name="date">The date.</param>
    /// <param name="light">Why the day is one of a light week (see <see cref="LightWeeks.Why"/>); null where it is not.</param>
    /// <param name="onBar">The loaded bar that the exercise before it left, whose plates may stay on; null for a bare bar.</param>
    public static Prescription Prescribe(
        Slot slot,
        Exercise exercise,
        GymKit kit,
        TrainingHistory history,
        LocalDate date,
        string? light = null,
        BarStack? onBar = null) => Prescribe(slot, exercise, new KitLoads(kit), history, date, light, onBar);

    /// <summary>The same with what the gym can load at hand.</summary>
    internal static Prescription Prescribe(
        Slot slot, Exercise exercise, KitLoads gym, TrainingHistory history, LocalDate date, string? light, BarStack? onBar)
    {
        var decision = slot.Ladder?.RungOf(exercise.Id) is null
            ? Decide(slot, exercise, gym.Kit, gym.For(exercise), history, date, light)
            : Climbing.AsOn(slot, exercise, history, date);
        return Prescribed(slot, exercise, decision, gym, history, onBar);
    }

    private static Prescription Prescribed(
        Slot slot, Exercise exercise, Decision decision, KitLoads gym, TrainingHistory history, BarStack? onBar)
    {
        return new Prescription
        {
            Slot = slot.Key,
            Motion = exercise.Motion,
            Exercise = exercise.Id,
            Scheme = RungSlots.Of(slot, exercise).Scheme,
            Targets = decision.Targets,
            AsksFirst = exercise.Inverted && !HeadDown.IsTaught(history),
            EachSide = exercise is { OneSided: true, Held: true },
            Load = decision.Load,
            Ramp = decision.Load is { } work ? gym.RampFor(slot.Ramp, work, exercise, onBar) : [],
            Search = decision.Search,
            Rest = slot.Rest,
            Group = slot.Group,
            ChangeOver = slot.ChangeOver,
            Why = decision.Why,
        };
    }

    private static Decision Decide(
        Slot slot, Exercise exercise, GymKit kit, ReachableLoads? loads, TrainingHistory history, LocalDate date, string? light)
    {
        var past = Past.Of(history, exercise, slot);
        var decided = Progress.Next(
            slot, exercise, past, loads, date, Meanwhile.Of(history, exercise.Motion, date), KnownSets.For(history, slot, exercise, date));
        var decision = light is null ? decided : LightWeek.Of(decided, slot, exercise, past, loads, light);
        return decision with { Why = decision.Why.Advise(SmallerPlates.For(decision, exercise, kit)) };
    }

    // In the order they are done, because what one leaves on the bar may serve the next.
    private static IReadOnlyList<Prescription> InOrder(
        IEnumerable<Filling> filled, KitLoads loads, TrainingHistory history, LocalDate date, string? light = null)
    {
        List<Prescription> prescriptions = [];
        BarStack? onBar = null;
        foreach (var (slot, exercise, decision) in filled)
        {
            var asked = decision is null
                ? Prescribe(slot, exercise, loads, history, date, light, onBar)
                : Prescribed(slot, exercise, decision, loads, history, onBar);
            prescriptions.Add(asked);
            onBar = BarOrder.Of(asked, exercise, loads, onBar).LastOrDefault() ?? onBar;
        }

        return prescriptions;
    }

    private static TodaysPlan Filled(
        DayDue due, TrainingDay day, Catalogue catalogue, KitLoads gym, Lifter lifter, TrainingHistory history, LocalDate today)
    {
        var prescriptions = Prescriptions(day, catalogue, gym, lifter, history, today, play: null);
        return new TodaysPlan(
            due, day, prescriptions, TimeEstimate.Of(prescriptions, catalogue, LifterPace.Of(history)), PlateCheck.For(prescriptions, catalogue, gym))
        {
            StandIns = StandIns.For(day, catalogue, gym, lifter),
            LeftOut =
            [
                .. day.Slots.Where(s => prescriptions.All(p => p.Slot != s.Key))
                    .Select(s => $"{s.Key} is left out: nothing in this kit can fill it"),
            ],
        };
    }
}
