using NodaTime;

namespace RackSide.Training.History;

/// <summary>
/// Why a clock cannot be believed. A board without a battery wakes in the past; one set wrong may be years ahead. A session
/// dated by it would be wrong for good, so the lifter is asked for the date first.
/// </summary>
/// <param name="Last">When the newest entry was made; null where there is none.</param>
/// <param name="Behind">Whether the clock is behind; else it is absurdly ahead.</param>
public sealed record ClockDoubt(Instant? Last, bool Behind)
{
    // A clock that is set right by the network may go back by as much, and that dates nothing wrong.
    private static readonly Duration Tolerated = Duration.FromMinutes(10);

    // A lay-off of a year is long and real; beyond it a wrong clock is likelier, and a right one costs one key.
    private static readonly Duration Absurd = Duration.FromDays(366);

    // No logbook is older than the program.
    private static readonly Instant Earliest = Instant.FromUtc(2026, 1, 1, 0, 0);

    /// <summary>When the newest entry was made, which is the one of the highest identity; null where there is none.</summary>
    /// <param name="sessions">The sessions of everybody who trains here.</param>
    /// <param name="told">What was told outside sessions.</param>
    public static Instant? Newest(IEnumerable<SessionRecord> sessions, IEnumerable<Fact> told)
    {
        var entries = sessions.SelectMany(s => s.Facts.Select(f => (f.Id, f.At)).Append((s.Head.Id, s.Head.Begun)))
            .Concat(told.Select(f => (f.Id, f.At))).ToList();
        return entries.Count == 0 ? null : entries.MaxBy(e => e.Id).Item2;
    }

    /// <summary>What is wrong with the present by what is written, or null.</summary>
    /// <param name="last">
    /// When the newest entry was made (<see cref="Newest"/>); null where there is none. By identity and not by time, so that
    /// one that was once dated years ahead casts no doubt on all that follow it.
    /// </param>
    /// <param name="now">The present by the clock.</param>
    public static ClockDoubt? Of(Instant? last, Instant now) =>
        now < Earliest || now + Tolerated < last ? new ClockDoubt(last, Behind: true)
        : now - Absurd > last ? new ClockDoubt(last, Behind: false)
        : null;
}
