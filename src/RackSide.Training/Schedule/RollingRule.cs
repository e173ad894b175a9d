using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.Schedule;

/// <summary>
/// A plan whose days roll: each comes its rest days after the one before, so a missed strength day slides the rest along.
/// A missed skills day comes late only where the strength day after it still leaves at most three days between strength
/// days; else it is dropped. A strength day done where skills were expected drops them; an extra skills day changes
/// nothing but its own rest. Common practice, no source.
/// </summary>
internal sealed class RollingRule
{
    private readonly TrainedDays past;
    private readonly List<(TrainingDay Day, int Rests)> round;
    private readonly int firstStrength;
    private int next;
    private LocalDate due;

    /// <summary>Goes through the past.</summary>
    public RollingRule(Plan plan, TrainedDays past)
    {
        this.past = past;
        round = Round(plan);
        next = firstStrength = Math.Max(0, round.FindIndex(r => r.Day.Kind == DayKind.Strength));
        LocalDate? before = null;
        foreach (var done in past.Done)
        {
            if (before is { } last && Period.DaysBetween(last, done.Date) >= DueRule.LongAbsenceDays)
            {
                next = firstStrength;
            }

            before = done.Date;
            Take(done);
        }
    }

    /// <summary>What is due on a date that no rest rule and no absence has settled already.</summary>
    public Answer On(LocalDate today)
    {
        var (day, rests) = round[next];
        return day.Kind == DayKind.Skills && today > due && !StaysClose(today.PlusDays(rests + 1)) ? Dropped(today, rests)
            : today < due ? Answer.Rest($"a rest day of the round; {Answer.Kinds(day)} comes on {due.Short()}")
            : today == due ? Answer.Train(day, $"{Answer.Kinds(day)} is next in the round")
            : Answer.Train(day, $"{Answer.Kinds(day)} was due on {due.Short()}: it comes today, and the rest slides along");
    }

    /// <summary>The first day ever, or a day after a long absence.</summary>
    public Answer Begin(string why) => Answer.Train(round[firstStrength].Day, why);

    private Answer Dropped(LocalDate today, int rests)
    {
        var after = Enumerable.Range(1, round.Count).Select(i => round[(next + i) % round.Count].Day).First(d => d.Kind == DayKind.Strength);
        var then = due.PlusDays(rests + 1);
        var why = $"the skills day of {due.Short()} has passed and is dropped";
        return today < then ? Answer.Rest($"{why}: strength comes on {then.Short()}") : Answer.Train(after, $"{why}: strength comes today");
    }

    private bool StaysClose(LocalDate strength) =>
        past.LastStrength is not { } last || Period.DaysBetween(last, strength) <= DueRule.StrengthApart
        || round.TrueForAll(r => r.Day.Kind == DayKind.Skills);

    private void Take(DayDone done)
    {
        var kind = past.IsStrength(done) ? DayKind.Strength : DayKind.Skills;
        var skipped = Enumerable.Range(0, round.Count)
            .TakeWhile(i => i == 0 || round[(next + i - 1) % round.Count].Day.Kind == DayKind.Skills)
            .Cast<int?>()
            .FirstOrDefault(i => round[(next + i!.Value) % round.Count].Day.Kind == kind);
        var afterRest = done.Date.PlusDays(2);
        if (skipped is { } index)
        {
            var at = (next + index) % round.Count;
            due = done.Date.PlusDays(round[at].Rests + 1);
            next = (at + 1) % round.Count;
        }
        else if (due < afterRest)
        {
            due = afterRest;
        }
    }

    private static List<(TrainingDay Day, int Rests)> Round(Plan plan)
    {
        var days = plan.Rolling;
        var training = Enumerable.Range(0, days.Count).Where(i => days[i] is { } key && plan.Day(key) is not null).ToList();
        return [.. training.Zip([.. training.Skip(1), training[0] + days.Count]).Select(p => (plan.Day(days[p.First]!)!, p.Second - p.First - 1))];
    }
}
