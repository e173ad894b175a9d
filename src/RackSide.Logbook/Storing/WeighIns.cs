using RackSide.Training.History;

namespace RackSide.Logbook.Storing;

/// <summary>Body weights by date: those told in sessions and those told outside, one a date, the one told last.</summary>
internal static class WeighIns
{
    /// <summary>A lifter's body weights, oldest first. One told in a session counts for the session's date.</summary>
    /// <param name="outside">Those told outside a session.</param>
    /// <param name="sessions">The cards of the sessions, each with the one told in it.</param>
    public static IEnumerable<WeighIn> Of(IEnumerable<KeptWeight> outside, IEnumerable<SessionCard> sessions) => outside
        .Concat(sessions.Where(c => c.Weighed is not null).Select(c => new KeptWeight(c.Weighed!.Value.Id, c.Lifter, c.Date, c.Weighed.Value.Weight)))
        .GroupBy(w => w.Date)
        .OrderBy(day => day.Key)
        .Select(day => new WeighIn(day.Key, day.MaxBy(w => w.Id)!.Weight));
}
