using RackSide.Training.History;

namespace RackSide.Logbook.Storing;

/// <summary>Body weights by date: those told in sessions and those told outside, one a date, the one told last.</summary>
internal static class WeighIns
{
    /// <summary>A lifter's body weights, oldest first. One told in a session counts for the session's date.</summary>
    public static IEnumerable<WeighIn> Of(Contents contents, string lifter)
    {
        var inSessions =
            from session in contents.Sessions
            where session.Head.Lifter == lifter
            from told in session.Standing.OfType<BodyWeighed>()
            select new KeptWeight(told.Id, lifter, session.Date, told.Weight);
        return contents.Weights
            .Where(w => w.Lifter == lifter)
            .Concat(inSessions)
            .GroupBy(w => w.Date)
            .OrderBy(day => day.Key)
            .Select(day => new WeighIn(day.Key, day.MaxBy(w => w.Id)!.Weight));
    }
}
