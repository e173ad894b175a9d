using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Planning;

namespace RackSide.Logbook.Storing;

/// <summary>A session in the register.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="Number">The number of its document.</param>
/// <param name="Facts">How many facts it has.</param>
/// <param name="Card">What else is known of it; null while it must be made anew.</param>
internal sealed record RegisterRow(FactId Id, long Number, int Facts, SessionCard? Card);

/// <summary>A register as it is kept with the log.</summary>
/// <param name="HighestSequence">The highest count of any identity.</param>
/// <param name="Newest">The newest entry by identity.</param>
/// <param name="Rows">The sessions.</param>
internal sealed record RegisterState(long HighestSequence, (FactId Id, Instant At)? Newest, IReadOnlyList<RegisterRow> Rows)
{
    /// <summary>Made of everything that a log holds.</summary>
    public static RegisterState Of(Contents contents)
    {
        (FactId Id, Instant At)? newest = null;
        foreach (var entry in Entries(contents).Where(e => contents.Share.State.Gym is null || e.Id.Rack == contents.Rack))
        {
            newest = newest is { } known && known.Id.CompareTo(entry.Id) > 0 ? newest : entry;
        }

        return new(
            contents.HighestSequence,
            newest,
            [.. contents.NumberedSessions.Select(s => new RegisterRow(s.Session.Head.Id, s.Number, s.Session.Facts.Count, LookBack.Card(s.Session)))]);
    }

    private static IEnumerable<(FactId Id, Instant At)> Entries(Contents contents) =>
        contents.Sessions.SelectMany(s => s.Facts.Select(f => (f.Id, f.At)).Append((s.Head.Id, s.Head.Begun)))
            .Concat(contents.Told.Select(t => (t.Fact.Id, t.Fact.At)));
}
