using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Schedule;
using RackSide.Training.Summary;

namespace RackSide;

/// <summary>A week as it stood on its last day, so that what came later does not change it; this week as it stands.</summary>
/// <param name="Summary">The week.</param>
/// <param name="History">What had been done by then.</param>
/// <param name="WeighIns">The body weights by then.</param>
internal sealed record PastWeek(WeekSummary Summary, TrainingHistory History, IReadOnlyList<WeighIn> WeighIns)
{
    /// <summary>That week of a lifter.</summary>
    public static PastWeek Of(Gym gym, Lifter lifter, IsoWeek week)
    {
        var history = gym.History(lifter);
        var last = LocalDate.Min(week.Sunday, gym.Today);
        var until = new TrainingHistory([.. history.Sessions.Where(s => s.Date <= last)], history.ToldOutside);
        var weighIns = gym.Logbook.WeighIns(lifter.Key).Where(w => w.Date <= last).ToList();
        return new PastWeek(gym.WeekUntil(lifter, last), until, weighIns);
    }
}
