using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Body;

/// <summary>Sleep against a floor and an aim, and a bedtime from the usual rising time.</summary>
/// <param name="Mean">The mean of the nights told in the last week; null where none was.</param>
/// <param name="Nights">How many were told.</param>
/// <param name="Bedtime">When to be in bed; null where no rising time was told.</param>
public sealed record SleepAdvice(Duration? Mean, int Nights, LocalTime? Bedtime)
{
    /// <summary>
    /// Grown-ups want 7 hours or more (Watson et al. 2015, J Clin Sleep Med 11(6):591-592; Hirshkowitz et al. 2015, Sleep Health
    /// 1:40-43, 7 to 9, from memory). The aim is half an hour above that least; common practice.
    /// </summary>
    public static readonly Duration Aim = Duration.FromMinutes(450);

    /// <summary>Below six hours training goes badly and gains come slowly: the floor. Common practice.</summary>
    public static readonly Duration Floor = Duration.FromHours(6);

    /// <summary>From lights out to sleep. Common practice.</summary>
    public static readonly Duration ToFallAsleep = Duration.FromMinutes(15);

    private const int Nightly = 7;

    /// <summary>Whether the mean is under the floor.</summary>
    public bool UnderFloor => Mean < Floor;

    /// <summary>Whether the mean is under the aim.</summary>
    public bool UnderAim => Mean < Aim;

    /// <summary>The advice on a day.</summary>
    /// <param name="days">What was told of each day.</param>
    /// <param name="rises">The usual rising time, or null.</param>
    /// <param name="today">The day.</param>
    public static SleepAdvice Of(IReadOnlyList<DayTold> days, LocalTime? rises, LocalDate today)
    {
        var from = today.PlusDays(-Nightly);
        var nights = days.Where(d => d.On > from && d.On <= today).Select(d => d.Slept).OfType<Duration>().ToList();
        return new(
            nights.Count == 0 ? null : nights.Aggregate((a, b) => a + b) / nights.Count,
            nights.Count,
            rises is { } up ? up.PlusTicks(-(Aim + ToFallAsleep).BclCompatibleTicks) : null);
    }
}
