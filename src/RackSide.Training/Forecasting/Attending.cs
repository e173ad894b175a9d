using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Plans;

namespace RackSide.Training.Forecasting;

/// <summary>How much of what is planned is done.</summary>
internal static class Attending
{
    private const int WeeksLookedAt = 12;

    /// <summary>Days done and missed that stand in for a lifter of whom little is known. Common practice, no source.</summary>
    private const double DoneBeforehand = 5, PlannedBeforehand = 5.5;

    /// <summary>The share of the strength days of the last weeks that was done; over 0, at most 1.</summary>
    public static double Share(Plan plan, TrainingHistory history, LocalDate today)
    {
        var days = history.Sessions.Where(s => s.Head.Kind == DayKind.Strength && s.Trained).Select(s => s.Date).ToList();
        if (days.Count == 0)
        {
            return DoneBeforehand / PlannedBeforehand;
        }

        var from = LocalDate.Max(days.Min(), today.PlusDays(-7 * WeeksLookedAt));
        var planned = StrengthDaysAWeek(plan) * Period.DaysBetween(from, today) / 7.0;
        var share = (days.Count(d => d >= from && d < today) + DoneBeforehand) / (planned + PlannedBeforehand);
        return Math.Min(1, share);
    }

    private static double StrengthDaysAWeek(Plan plan) => plan.Rolls
        ? 7.0 * plan.Rolling.Count(k => k is not null && plan.Day(k)?.Kind == DayKind.Strength) / plan.Rolling.Count
        : plan.Week.Values.Count(k => plan.Day(k)?.Kind == DayKind.Strength);
}
