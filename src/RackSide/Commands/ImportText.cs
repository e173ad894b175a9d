using RackSide.Logbook;

namespace RackSide.Commands;

/// <summary>What an import would add, before it does.</summary>
internal static class ImportText
{
    /// <summary>The lines.</summary>
    public static IEnumerable<string> Lines(string name, LogbookSnapshot here, LogbookSnapshot record, Joined joined) =>
    [
        .. PlainText.Wrap($"the logbook: {CountsText.Of(here.Counts)}"),
        .. PlainText.Wrap($"{name}: {CountsText.Of(record.Counts)}"),
        .. Added(joined),
        .. joined.Known == 0 ? [] : PlainText.Wrap($"here already, and left as they are: {CountsText.Count(joined.Known, "entry", "entries")}"),
    ];

    private static IEnumerable<string> Added(Joined joined) => joined.AddsNothing
        ? ["importing it would add nothing: all of it is here"]
        : ["importing it would add:", .. Counts(joined).Where(c => c.Count > 0).Select(c => $"  {CountsText.Count(c.Count, c.One, c.Many)}")];

    private static (int Count, string One, string Many)[] Counts(Joined joined) =>
    [
        (joined.Lifters, "lifter", "lifters"),
        (joined.Sessions, "session", "sessions"),
        (joined.Facts, "entry in sessions that are here", "entries in sessions that are here"),
        (joined.WeighIns, "weigh-in", "weigh-ins"),
        (joined.Told, "entry told outside sessions", "entries told outside sessions"),
    ];
}
