using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.Schedule;

/// <summary>
/// Which training day falls on a date. Common practice, no source, except the rest between: non-consecutive days for the
/// same muscles is the handbook rule (NSCA, from memory). In order:
/// <list type="number">
/// <item>A rest day follows every training day, whatever the pattern says.</item>
/// <item>A missed strength day is made good on a free day if the day after it is free too, or else in place of the next
/// skills day; a missed skills day is dropped. Nothing is ever done twice to catch up.</item>
/// <item>After two weeks away, training begins again with a strength day on a day of the pattern.</item>
/// <item>The first day ever is a strength day, on a day of the pattern or a free day with a free day after it.</item>
/// </list>
/// </summary>
public static class DueRule
{
    /// <summary>Days without training after which the pattern begins anew.</summary>
    public const int LongAbsenceDays = 14;

    // A day of the pattern comes within a week; the rest rule can put it off by one more round at most.
    private const int LooksAheadDays = 15;

    /// <summary>What is due on a date.</summary>
    /// <param name="plan">The plan, with at least one training day in its week.</param>
    /// <param name="done">The training days done, in any order; dates after <paramref name="today"/> are not looked at.</param>
    /// <param name="today">The date asked about.</param>
    public static DayDue For(Plan plan, IReadOnlyList<DayDone> done, LocalDate today)
    {
        var past = new TrainedDays(plan, [.. done.Where(d => d.Date <= today)]);
        var (kind, day, why) = Answer(plan, past, today);
        return Complete(plan, past, today, kind, day, why);
    }

    /// <summary>
    /// What to train when the lifter chose to train although nothing is due: the day wanted, or the one that would come
    /// next, with a caution in place of the why-line where the rest between is lost.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="done">The training days done.</param>
    /// <param name="today">The date.</param>
    /// <param name="wanted">The training day wanted; null takes the one that would come next.</param>
    public static DayDue AskedFor(Plan plan, IReadOnlyList<DayDone> done, LocalDate today, TrainingDay? wanted = null)
    {
        var due = For(plan, done, today);
        var day = wanted ?? due.Day ?? due.NextDay;
        var past = new TrainedDays(plan, [.. done.Where(d => d.Date <= today)]);
        return due.Kind == DueKind.Train && due.Day == day
            ? due
            : Complete(plan, past, today, DueKind.Train, day, Caution(plan, past, today));
    }

    /// <summary>The first strength date from a date on, if every day before it goes as said.</summary>
    /// <returns>The date and its day; null where the plan has no strength day.</returns>
    public static (LocalDate Date, TrainingDay Day)? NextStrength(Plan plan, IReadOnlyList<DayDone> done, LocalDate today)
    {
        if (WeekPattern.StrengthBefore(plan, today) is null)
        {
            return null;
        }

        var due = For(plan, done, today);
        return due switch
        {
            { Day: { Kind: DayKind.Strength } day } => (today, day),
            { NextDay.Kind: DayKind.Strength } => (due.Next, due.NextDay),
            _ => NextStrength(plan, [.. done, new DayDone(due.Next, due.NextDay.Key)], due.Next.PlusDays(1)),
        };
    }

    private static DayDue Complete(
        Plan plan, TrainedDays past, LocalDate today, DueKind kind, TrainingDay? day, string why)
    {
        var after = day is null ? past : past.With(new DayDone(today, day.Key));
        var next = Enumerable.Range(1, LooksAheadDays)
            .Select(today.PlusDays)
            .First(date => Answer(plan, after, date).Day is not null);
        return new DayDue(kind, day, why, next, Answer(plan, after, next).Day!);
    }

    private static (DueKind Kind, TrainingDay? Day, string Why) Answer(Plan plan, TrainedDays past, LocalDate today) =>
        past.On(today) ? (DueKind.DoneToday, null, "today's training is done")
        : past.On(today.PlusDays(-1)) ? Rest("you trained yesterday: a rest day comes between")
        : past.Last is not { } last ? FirstEver(plan, today)
        : Period.DaysBetween(last, today) >= LongAbsenceDays ? AfterAbsence(plan, last, today)
        : WeekPattern.On(plan, today) is { } day ? PatternDay(plan, past, today, day)
        : FreeDay(plan, past, today);

    private static (DueKind, TrainingDay?, string) FirstEver(Plan plan, LocalDate today) =>
        WeekPattern.On(plan, today) is { } day
            ? Train(
                WeekPattern.FirstStrength(plan, today),
                day.Kind == DayKind.Strength ? $"first day: {Named(today, day)}" : "first day: it begins with strength, to learn the lifts")
        : TomorrowIsFree(plan, today)
            ? Train(WeekPattern.FirstStrength(plan, today), "first day: tomorrow is free, so a rest day follows")
            : Rest("begin tomorrow: it is a training day, and a rest day must follow each");

    private static (DueKind, TrainingDay?, string) AfterAbsence(Plan plan, LocalDate last, LocalDate today) =>
        WeekPattern.On(plan, today) is null
            ? Rest($"{Period.DaysBetween(last, today)} days since {last.Short()}: begin again on the next training day")
            : Train(
                WeekPattern.FirstStrength(plan, today),
                $"{Period.DaysBetween(last, today)} days since {last.Short()}: begin again with strength");

    private static (DueKind, TrainingDay?, string) PatternDay(
        Plan plan, TrainedDays past, LocalDate today, TrainingDay day) =>
        day.Kind == DayKind.Skills && past.OwedStrength(today) is { } owed
            ? Train(
                WeekPattern.On(plan, owed)!,
                $"{owed.Weekday()}'s strength day was missed: it comes today, the skills day is dropped")
            : Train(day, Named(today, day));

    private static (DueKind, TrainingDay?, string) FreeDay(Plan plan, TrainedDays past, LocalDate today) =>
        past.OwedStrength(today) is not { } owed ? Rest($"{today.Weekday()} is a rest day")
        : TomorrowIsFree(plan, today)
            ? Train(
                WeekPattern.On(plan, owed)!,
                $"{owed.Weekday()}'s strength day was missed, and a rest day still follows today")
            : Rest($"{owed.Weekday()}'s strength day was missed; tomorrow is a training day, so rest today");

    private static string Caution(Plan plan, TrainedDays past, LocalDate today) =>
        past.On(today) ? "asked for: a second session in a day; keep it light, stop if form slips"
        : past.On(today.PlusDays(-1)) ? "asked for: you trained yesterday; keep it light, stop if form slips"
        : !TomorrowIsFree(plan, today) ? "asked for: tomorrow's training day then becomes a rest day"
        : "asked for: not a training day of the pattern";

    private static bool TomorrowIsFree(Plan plan, LocalDate today) => WeekPattern.On(plan, today.PlusDays(1)) is null;

    private static string Named(LocalDate date, TrainingDay day) =>
        $"{date.Weekday()} is a {(day.Kind == DayKind.Strength ? "strength" : "skills")} day";

    private static (DueKind, TrainingDay?, string) Train(TrainingDay day, string why) => (DueKind.Train, day, why);

    private static (DueKind, TrainingDay?, string) Rest(string why) => (DueKind.Rest, null, why);
}
