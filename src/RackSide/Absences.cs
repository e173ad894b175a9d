using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Schedule;

namespace RackSide;

/// <summary>Days away as they are told, ended and taken back; each is a fact outside any session.</summary>
/// <param name="gym">Where they are kept.</param>
/// <param name="lifter">Whose.</param>
internal sealed class Absences(Gym gym, Lifter lifter)
{
    /// <summary>Further off than this a date is a slip of the keys.</summary>
    private const int MostDays = 731;

    /// <summary>Those that stand and are not over, and those over for less than four weeks, by their first day.</summary>
    public IReadOnlyList<AwayTold> Recent =>
        [.. Standing.Where(a => a.Until is not { } last || last >= gym.Today.PlusDays(-28)).OrderBy(a => a.From)];

    private IEnumerable<AwayTold> Standing => gym.Recent(lifter).Told.OfType<AwayTold>();

    /// <summary>Why these days cannot be told, in one sentence; null where they can.</summary>
    public string? Refusal(LocalDate from, LocalDate? until) =>
        until < from ? $"{until.Value.Shown()} is before {from.Shown()}; the last day away comes after the first."
        : new[] { from, until ?? from }.Where(d => Math.Abs(Period.DaysBetween(gym.Today, d)) > MostDays).Select(d => (LocalDate?)d).FirstOrDefault() is { } far
            ? $"{far.Shown()} is more than two years from today; check the year."
        : null;

    /// <summary>Keeps days away.</summary>
    public AwayTold Tell(LocalDate from, LocalDate? until, AwayFor why)
    {
        var told = new AwayTold(gym.Logbook.NextId(), gym.Clock.GetCurrentInstant(), from, until, why);
        gym.Logbook.Tell(lifter.Key, told);
        return told;
    }

    /// <summary>Takes days away back, as if they had never been told.</summary>
    public void TakeBack(AwayTold away) => gym.TakeBack(lifter, away);

    /// <summary>The lifter is back: every absence that holds today ends yesterday, and is taken back where it began today.</summary>
    /// <returns>Those that were ended.</returns>
    public IReadOnlyList<AwayTold> Back()
    {
        var ended = Standing.Where(a => new DaysAway(a.From, a.Until).Holds(gym.Today)).ToList();
        foreach (var away in ended)
        {
            // The shorter one first: if the second write fails the days away still stand.
            if (away.From < gym.Today)
            {
                Tell(away.From, gym.Today.PlusDays(-1), away.For);
            }

            TakeBack(away);
        }

        return ended;
    }
}
