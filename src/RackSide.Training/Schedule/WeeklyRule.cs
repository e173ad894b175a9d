using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.Schedule;

/// <summary>
/// A plan on weekdays, on a date that no rest rule and no absence has settled already. A missed strength day comes today if
/// a rest day still follows; else, if tomorrow is a skills day, it comes today and the week slides by a day; else it waits
/// for tomorrow's strength day, or takes the place of today's skills day. A missed skills day comes today only where that
/// leaves a rest day before the next training day, and is dropped otherwise. Common practice, no source.
/// </summary>
internal sealed class WeeklyRule(Plan plan, TrainedDays past)
{
    /// <summary>What is due.</summary>
    public Answer On(LocalDate today) => WeekPattern.On(plan, today) is { } day ? PatternDay(today, day) : FreeDay(today);

    /// <summary>The first day ever.</summary>
    public Answer FirstEver(LocalDate today) =>
        WeekPattern.On(plan, today) is { } day
            ? Answer.Train(
                WeekPattern.FirstStrength(plan, today),
                day.Kind == DayKind.Strength ? $"first day: {Answer.Named(today, day)}" : "first day: it begins with strength, to learn the lifts")
        : IsFree(today.PlusDays(1))
            ? Answer.Train(WeekPattern.FirstStrength(plan, today), "first day: tomorrow is free, so a rest day follows")
            : Answer.Rest("begin tomorrow: it is a training day, and a rest day must follow each");

    /// <summary>A day after a long absence.</summary>
    public Answer AfterAbsence(LocalDate today, string gone) =>
        WeekPattern.On(plan, today) is null
            ? Answer.Rest($"{gone}: begin again on the next training day")
            : Answer.Train(WeekPattern.FirstStrength(plan, today), $"{gone}: begin again with strength");

    /// <summary>Whether nothing of the pattern falls on a date.</summary>
    public bool IsFree(LocalDate date) => WeekPattern.On(plan, date) is null || past.IsAway(date);

    private Answer PatternDay(LocalDate today, TrainingDay day) =>
        day.Kind == DayKind.Strength ? Answer.Train(day, Answer.Named(today, day))
        : past.OwedStrength(today) is { } owed
            ? Answer.Train(
                WeekPattern.On(plan, owed)!,
                $"{owed.Weekday()}'s strength day was missed: it comes today, the skills day is dropped")
        : past.StrengthPassedAway(today)
            ? Answer.Train(WeekPattern.FirstStrength(plan, today), "back from days away: begin with strength, the skills day is dropped")
        : Answer.Train(day, Answer.Named(today, day));

    private Answer FreeDay(LocalDate today) =>
        past.OwedStrength(today) is { } strength ? MissedStrength(today, strength)
        : past.OwedSkills(today) is { } skills ? MissedSkills(today, skills)
        : Answer.Rest($"{today.Weekday()} is a rest day");

    private Answer MissedStrength(LocalDate today, LocalDate owed)
    {
        var (day, tomorrow) = (WeekPattern.On(plan, owed)!, today.PlusDays(1));
        return IsFree(tomorrow) ? Answer.Train(day, $"{Put(owed, "strength")}, and a rest day still follows today")
            : WeekPattern.On(plan, tomorrow)!.Kind == DayKind.Strength
                ? Answer.Rest($"{Put(owed, "strength")}; tomorrow is a strength day, so rest today")
            : CanSlide(tomorrow)
                ? Answer.Train(day, $"{Put(owed, "strength")}: it comes today, and the rest of the week slides by a day")
            : Answer.Rest($"{Put(owed, "strength")}; tomorrow is a training day, so rest today");
    }

    private Answer MissedSkills(LocalDate today, LocalDate owed)
    {
        var (day, tomorrow) = (WeekPattern.On(plan, owed)!, today.PlusDays(1));
        return IsFree(tomorrow) ? Answer.Train(day, $"{Put(owed, "skills")}, and a rest day still follows today")
            : CanSlide(tomorrow) && (WeekPattern.On(plan, tomorrow)!.Kind == DayKind.Skills || StaysClose(today.PlusDays(2)))
                ? Answer.Train(day, $"{Put(owed, "skills")}: it comes today, and the rest of the week slides by a day")
            : Answer.Rest($"{Put(owed, "skills")}, and is dropped: tomorrow is a training day");
    }

    // A day is missed where nobody came; where training the day before forbade it, it was only put off.
    private string Put(LocalDate owed, string kind) =>
        $"{owed.Weekday()}'s {kind} day was {(past.On(owed.PlusDays(-1)) ? "put off for a rest day" : "missed")}";

    private bool StaysClose(LocalDate strength) => past.LastStrength is { } last && Period.DaysBetween(last, strength) <= DueRule.StrengthApart;

    /// <summary>Whether the training days from a date on can each come a day later, until a wider gap of the pattern takes it up.</summary>
    private bool CanSlide(LocalDate from)
    {
        for (var date = from; WeekPattern.On(plan, date) is { } day; date = date.PlusDays(2))
        {
            var next = WeekPattern.On(plan, date.PlusDays(2));
            if (past.IsAway(date) || past.IsAway(date.PlusDays(1)) || (day.Kind == DayKind.Strength && next?.Kind == DayKind.Strength))
            {
                return false;
            }
        }

        return true;
    }
}
