using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.Schedule;

/// <summary>
/// Which training day falls on a date. Common practice, no source, except the rest between: non-consecutive days for the
/// same muscles is the handbook rule (NSCA, from memory). In order:
/// <list type="number">
/// <item>A day away is neither due nor missed.</item>
/// <item>A rest day follows every training day, whatever the pattern says.</item>
/// <item>After two weeks without training it begins again with a strength day, on a day of the pattern.</item>
/// <item>The first day ever is a strength day, on a day of the pattern or a free day with a free day after it.</item>
/// <item>A plan on weekdays: see <see cref="WeeklyRule"/>; one that rolls: see <see cref="RollingRule"/>. Nothing is ever
/// done twice to catch up.</item>
/// </list>
/// </summary>
public static class DueRule
{
    /// <summary>Days without training after which the pattern begins anew.</summary>
    public const int LongAbsenceDays = 14;

    /// <summary>The most dates from one strength day to the next, where it can be: three days between.</summary>
    public const int StrengthApart = 4;

    /// <summary>What is due on a date.</summary>
    /// <param name="plan">The plan, with at least one training day.</param>
    /// <param name="done">The training days done, in any order; dates after <paramref name="today"/> are not looked at.</param>
    /// <param name="today">The date asked about.</param>
    /// <param name="away">The days away, in any order; null for none.</param>
    public static DayDue For(Plan plan, IReadOnlyList<DayDone> done, LocalDate today, IReadOnlyList<DaysAway>? away = null)
    {
        var past = Past(plan, done, today, away);
        return Complete(plan, past, today, AnswerOn(plan, past, today));
    }

    /// <summary>
    /// What to train when the lifter chose to train although nothing is due: the day wanted, or the one that would come
    /// next. The why-line advises where the rest between is lost, and tells what moves.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="done">The training days done.</param>
    /// <param name="today">The date.</param>
    /// <param name="wanted">The training day wanted; null takes the one that would come next.</param>
    /// <param name="away">The days away; null for none.</param>
    public static DayDue AskedFor(
        Plan plan, IReadOnlyList<DayDone> done, LocalDate today, TrainingDay? wanted = null, IReadOnlyList<DaysAway>? away = null)
    {
        var due = For(plan, done, today, away);
        var day = wanted ?? due.Day ?? due.NextDay;
        if (due.Kind == DueKind.Train && due.Day == day)
        {
            return due;
        }

        var past = Past(plan, done, today, away);
        var why = $"asked for: {Advice(past, today, due.Day)}; {Moves.Of(plan, past, today, day)}";
        return Complete(plan, past, today, Answer.Train(day, why));
    }

    /// <summary>
    /// The training day to offer for an extra session: the one that would come next, but the skills day where that would
    /// make two strength days in a row.
    /// </summary>
    /// <inheritdoc cref="For"/>
    public static TrainingDay Extra(Plan plan, IReadOnlyList<DayDone> done, LocalDate today, IReadOnlyList<DaysAway>? away = null)
    {
        var next = For(plan, done, today, away).NextDay;
        var fresh = Past(plan, done, today, away).LastStrength is { } last && last >= today.PlusDays(-1);
        return fresh && next.Kind == DayKind.Strength ? plan.Days.FirstOrDefault(d => d.Kind == DayKind.Skills) ?? next : next;
    }

    /// <summary>The first strength date from a date on, if every day before it goes as said.</summary>
    /// <returns>The date and its day; null where the plan has no strength day.</returns>
    public static (LocalDate Date, TrainingDay Day)? NextStrength(
        Plan plan, IReadOnlyList<DayDone> done, LocalDate today, IReadOnlyList<DaysAway>? away = null)
    {
        if (plan.StrengthDaysApart() == 0)
        {
            return null;
        }

        var due = For(plan, done, today, away);
        return due switch
        {
            { Day: { Kind: DayKind.Strength } day } => (today, day),
            { NextDay.Kind: DayKind.Strength } => (due.Next, due.NextDay),
            _ => NextStrength(plan, [.. done, new DayDone(due.Next, due.NextDay.Key)], due.Next.PlusDays(1), away),
        };
    }

    /// <summary>The calendar from a date on, if every day goes as said.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="done">The training days done.</param>
    /// <param name="today">The first date.</param>
    /// <param name="days">How many dates; 1 or more.</param>
    /// <param name="away">The days away; null for none.</param>
    public static IReadOnlyList<DayAhead> Ahead(
        Plan plan, IReadOnlyList<DayDone> done, LocalDate today, int days, IReadOnlyList<DaysAway>? away = null) =>
        [.. Ahead(plan, Past(plan, done, today, away), today, days)];

    internal static IEnumerable<DayAhead> Ahead(Plan plan, TrainedDays past, LocalDate today, int days)
    {
        for (var date = today; date < today.PlusDays(days); date = date.PlusDays(1))
        {
            var (kind, day, why) = AnswerOn(plan, past, date);
            if (kind == DueKind.DoneToday)
            {
                day = past.Done.Where(d => d.Date == date).Select(d => plan.Day(d.DayKey)).FirstOrDefault();
            }
            else if (day is not null)
            {
                past = past.With(new DayDone(date, day.Key));
            }

            yield return new DayAhead(date, kind, day, why);
        }
    }

    private static TrainedDays Past(Plan plan, IReadOnlyList<DayDone> done, LocalDate today, IReadOnlyList<DaysAway>? away) =>
        new(plan, done.Where(d => d.Date <= today), away ?? []);

    // The search ends: two weeks without training, or without being away, every pattern begins again within a week.
    private static DayDue Complete(Plan plan, TrainedDays past, LocalDate today, Answer answer)
    {
        var after = (answer.Kind == DueKind.Train ? past.With(new DayDone(today, answer.Day!.Key)) : past).BackAfter(today);
        var date = today.PlusDays(1);
        while (AnswerOn(plan, after, date).Day is null)
        {
            date = after.AwayOn(date) is { Until: { } last } ? last.PlusDays(1) : date.PlusDays(1);
        }

        return new DayDue(answer.Kind, answer.Day, answer.Why, date, AnswerOn(plan, after, date).Day!);
    }

    private static Answer AnswerOn(Plan plan, TrainedDays past, LocalDate today) =>
        past.On(today) ? new Answer(DueKind.DoneToday, null, "today's training is done")
        : past.AwayOn(today) is { } away ? new Answer(DueKind.Away, null, Gone(away))
        : past.On(today.PlusDays(-1)) ? Answer.Rest("you trained yesterday: a rest day comes between")
        : plan.Rolls ? Rolling(new RollingRule(plan, past), past, today)
        : Weekly(new WeeklyRule(plan, past), past, today);

    private static Answer Weekly(WeeklyRule rule, TrainedDays past, LocalDate today) =>
        past.Last is not { } last ? rule.FirstEver(today)
        : Period.DaysBetween(last, today) is var days && days >= LongAbsenceDays ? rule.AfterAbsence(today, Since(days, last))
        : rule.On(today);

    private static Answer Rolling(RollingRule rule, TrainedDays past, LocalDate today) =>
        past.Last is not { } last ? rule.Begin("first day: it begins with strength, to learn the lifts")
        : Period.DaysBetween(last, today) is var days && days >= LongAbsenceDays ? rule.Begin($"{Since(days, last)}: begin again with strength")
        : rule.On(today);

    private static string Since(int days, LocalDate last) => $"{days} days since {last.Short()}";

    private static string Gone(DaysAway away) => away.Until is { } last
        ? last == away.From ? "away today" : $"away until {last.Short()}"
        : $"away since {away.From.Short()}, until you say that you are back";

    private static string Advice(TrainedDays past, LocalDate today, TrainingDay? due) =>
        past.On(today) ? "a second session in a day; keep it light, stop if form slips"
        : past.On(today.PlusDays(-1)) ? "you trained yesterday; keep it light, stop if form slips"
        : past.IsAway(today) ? "these are days away; train only if you are well, and begin light"
        : due is not null ? $"the {Answer.Kinds(due)} day is due"
        : "not a training day of the pattern";
}
