using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Skills;

/// <summary>
/// The best recent set of an exercise: the most reps with honest form in one set of the last twelve weeks, on whatever day.
/// Where the last weeks have none, the best of the last day it was done on. The twelve weeks are ours: long enough to keep
/// a set that was really tried, short enough to forget a better season.
/// </summary>
public static class BestSet
{
    private const int RecentDays = 84;

    /// <summary>Its reps, or null where there is no set.</summary>
    /// <param name="history">All the lifter's sessions before today's.</param>
    /// <param name="exercise">The exercise's id.</param>
    /// <param name="date">Today.</param>
    public static int? Reps(TrainingHistory history, string exercise, LocalDate date)
    {
        var done = history.Sessions.Where(s => s.Date <= date)
            .SelectMany(s => s.Sets.Select(set => (s.Date, Set: set)))
            .Where(s => s.Set.Set.Exercise == exercise && s.Set.Set is { Kind: SetKind.Working or SetKind.Share, Done: > 0 } && !s.Set.FormSlipped)
            .ToList();
        var recent = done.Where(s => Period.DaysBetween(s.Date, date) <= RecentDays).ToList();
        return (recent.Count > 0 ? recent : done.Where(s => s.Date == done.Max(d => d.Date)).ToList())
            .Select(s => (int?)s.Set.Set.Done).Max();
    }
}
