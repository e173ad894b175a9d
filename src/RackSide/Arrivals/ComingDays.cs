using NodaTime;
using RackSide.Pages;
using RackSide.Pages.Settings;
using RackSide.Visits;

namespace RackSide.Arrivals;

/// <summary>The first page of today and of the days to come, as a start on each would show it.</summary>
internal static class ComingDays
{
    // Who trains three times a week is back by then.
    private const int Days = 4;

    /// <summary>Draws them; none where the next start asks something else first, as a session left open or a set-up does.</summary>
    /// <param name="gym">Where.</param>
    /// <param name="size">How large the window is.</param>
    /// <param name="look">How it is painted.</param>
    public static IReadOnlyList<KeptPage> Pages(Gym gym, PageSize size, Appearance look) =>
        gym.Rules is not null && gym.Lifter() is { } lifter && gym.Logbook.Open(lifter.Key) is null
            ? [.. Enumerable.Range(0, Days).Select(ahead => Page(gym, gym.Today.PlusDays(ahead), size, look))]
            : [];

    private static KeptPage Page(Gym gym, LocalDate day, PageSize size, Appearance look)
    {
        var (begins, ends) = (gym.Zone.AtStartOfDay(day).ToInstant(), gym.Zone.AtStartOfDay(day.PlusDays(1)).ToInstant());
        var then = Instant.Max(begins, gym.Clock.GetCurrentInstant());
        using var visit = new RackVisit(gym.On(new StoppedClock(then)), lifter: null);
        return new KeptPage(visit.Draw(size, then), look, begins, ends);
    }

    private sealed class StoppedClock(Instant at) : IClock
    {
        public Instant GetCurrentInstant() => at;
    }
}
