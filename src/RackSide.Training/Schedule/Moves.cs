using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.Schedule;

/// <summary>What an extra session does to the days that follow: the calendar with it held against the calendar without.</summary>
internal static class Moves
{
    // After a week the pattern has taken up any slide.
    private const int Days = 9;

    /// <summary>The words: <c>Monday's strength day moves to Tue 10 Nov, and Wednesday's skills day to Thu 12 Nov</c>.</summary>
    public static string Of(Plan plan, TrainedDays past, LocalDate today, TrainingDay extra)
    {
        var with = Training(plan, past.With(new DayDone(today, extra.Key)), today);
        return plan.Rolls ? $"the rest slides along: {Answer.Kinds(with[0].Day)} is next, on {with[0].Date.Short()}"
            : Told(Training(plan, past, today), with, extra);
    }

    private static string Told(
        List<(LocalDate Date, TrainingDay Day)> without, List<(LocalDate Date, TrainingDay Day)> with, TrainingDay extra)
    {
        var gone = without.Except(with).ToList();
        var come = with.Except(without).ToList();
        List<string> told = [];
        var stoodFor = false;
        foreach (var (date, day) in gone)
        {
            var later = come.FindIndex(c => c.Day.Kind == day.Kind && c.Date > date && Period.DaysBetween(date, c.Date) <= 2);
            var name = $"{date.Weekday()}'s {Answer.Kinds(day)} day";
            if (later >= 0)
            {
                told.Add($"{name} moves to {come[later].Date.Short()}");
                come.RemoveAt(later);
            }
            else
            {
                told.Add(!stoodFor && day.Kind == extra.Kind ? $"it stands for {name}" : $"{name} is dropped");
                stoodFor |= day.Kind == extra.Kind;
            }
        }

        told.AddRange(come.Select(c => $"{Answer.Kinds(c.Day)} comes on {c.Date.Short()}"));
        return told.Count == 0 ? "nothing else moves" : string.Join(", ", told);
    }

    // From tomorrow on; what is due today is taken as done where nothing else is.
    private static List<(LocalDate Date, TrainingDay Day)> Training(Plan plan, TrainedDays past, LocalDate today) =>
        [.. DueRule.Ahead(plan, past, today, Days).Where(a => a.Date > today && a.Kind == DueKind.Train).Select(a => (a.Date, a.Day!))];
}
