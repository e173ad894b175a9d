using RackSide.Logbook;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary>How much a logbook holds, in few words.</summary>
internal static class CountsText
{
    /// <summary>All of it: <c>2 lifters, 14 sessions, 212 sets, 9 weigh-ins, newest Wed 25 Nov 2026</c>.</summary>
    public static string Of(LogbookCounts counts) => string.Join(", ", new[]
    {
        Count(counts.Lifters, "lifter"), Count(counts.Sessions, "session"), Count(counts.Sets, "set"), Count(counts.WeighIns, "weigh-in"),
        counts.Newest is { } newest ? $"newest {newest.Shown()}" : "no session",
    });

    /// <summary>What another logbook in its place would change, one line a thing; none where the counts are the same.</summary>
    public static IEnumerable<string> Change(LogbookCounts here, LogbookCounts there) => new[]
    {
        Change(here.Lifters, there.Lifters, "lifter"),
        Change(here.Sessions, there.Sessions, "session"),
        Change(here.Sets, there.Sets, "set"),
        Change(here.WeighIns, there.WeighIns, "weigh-in"),
        Change(here.Told, there.Told, "entry told outside sessions", "entries told outside sessions"),
        here.Newest == there.Newest ? null : $"the newest session is of {Day(there)}, not of {Day(here)}",
    }.OfType<string>();

    /// <summary>So many of a thing.</summary>
    public static string Count(int count, string thing, string? things = null) => $"{count} {(count == 1 ? thing : things ?? thing + "s")}";

    private static string Day(LogbookCounts counts) => counts.Newest?.Shown() ?? "no day";

    private static string? Change(int here, int there, string thing, string? things = null) => here == there ? null
        : $"{Count(Math.Abs(there - here), thing, things)} {(there > here ? "more" : "fewer")}: {there}, not {here}";
}
