using NodaTime;
using NodaTime.Calendars;

namespace RackSide.Logbook.Copies;

/// <summary>
/// Which backups stay: the last of each of the newest seven days, four weeks and twelve months that have any, within a
/// limit of room. It counts the dates that are there and not back from today, so that neither a lay-off nor a wrong clock
/// empties the folder.
/// </summary>
internal static class Rotation
{
    /// <summary>Days, weeks (of ISO 8601) and months that keep their last backup.</summary>
    public const int Days = 7, Weeks = 4, Months = 12;

    /// <summary>Those that stay.</summary>
    /// <param name="all">All there are, with their bytes.</param>
    /// <param name="made">The one just made, which stays in any case.</param>
    /// <param name="most">The most bytes they may take; the oldest go first.</param>
    public static IReadOnlySet<BackupName> Stay(IReadOnlyDictionary<BackupName, long> all, BackupName made, long most)
    {
        var stay = Newest(all.Keys, b => b.Date, Days)
            .Concat(Newest(all.Keys, b => (WeekYearRules.Iso.GetWeekYear(b.Date), WeekYearRules.Iso.GetWeekOfWeekYear(b.Date)), Weeks))
            .Concat(Newest(all.Keys, b => (b.Date.Year, b.Date.Month), Months))
            .Append(made)
            .ToHashSet();
        foreach (var oldest in stay.Where(b => b != made).Order().ToList())
        {
            if (stay.Sum(b => all[b]) > most)
            {
                stay.Remove(oldest);
            }
        }

        return stay;
    }

    private static IEnumerable<BackupName> Newest<T>(IEnumerable<BackupName> all, Func<BackupName, T> span, int count) =>
        all.GroupBy(span).Select(g => g.Max()!).OrderDescending().Take(count);
}
