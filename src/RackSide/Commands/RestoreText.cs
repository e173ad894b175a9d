using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary>What a restored backup would change, before it does.</summary>
internal static class RestoreText
{
    private const int MostNamed = 12;

    /// <summary>The lines.</summary>
    /// <param name="name">The backup's file.</param>
    /// <param name="backup">What it holds.</param>
    /// <param name="here">What the logbook holds; null where it cannot be read.</param>
    public static IEnumerable<string> Lines(string name, LogbookSnapshot backup, LogbookSnapshot? here) => here is null ? [] :
    [
        .. PlainText.Wrap($"the logbook: {CountsText.Of(here.Counts)}"),
        .. PlainText.Wrap($"{name}: {CountsText.Of(backup.Counts)}"),
        .. Told(Changes(backup, here)),
    ];

    private static IEnumerable<string> Told(List<string> changes) => changes.Count == 0
        ? ["restoring it would change nothing that counts"]
        : ["restoring it would leave:", .. changes.SelectMany(c => PlainText.Wrap(c, margin: 2))];

    private static List<string> Changes(LogbookSnapshot backup, LogbookSnapshot here) =>
    [
        .. CountsText.Change(here.Counts, backup.Counts),
        .. Only(here, backup) is { Count: > 0 } gone ? [$"not in the backup, so gone from the logbook: {Named(gone)}"] : (string[])[],
        .. Only(backup, here) is { Count: > 0 } back ? [$"back again: {Named(back)}"] : (string[])[],
        .. Fuller(here, backup) is { Count: > 0 } fuller ? [$"with fewer entries than here: {Named(fuller)}"] : (string[])[],
    ];

    private static List<SessionRecord> Only(LogbookSnapshot one, LogbookSnapshot other)
    {
        var known = All(other).Select(s => s.Head.Id).ToHashSet();
        return [.. All(one).Where(s => !known.Contains(s.Head.Id))];
    }

    private static List<SessionRecord> Fuller(LogbookSnapshot one, LogbookSnapshot other)
    {
        var facts = All(other).ToDictionary(s => s.Head.Id, s => s.Facts.Count);
        return [.. All(one).Where(s => facts.TryGetValue(s.Head.Id, out var count) && count < s.Facts.Count)];
    }

    private static IEnumerable<SessionRecord> All(LogbookSnapshot of) => of.Lifters().SelectMany(l => of.Sessions(l.Key));

    private static string Named(List<SessionRecord> sessions) =>
        string.Join(", ", sessions.TakeLast(MostNamed).Select(s => s.Date.Shown()))
        + (sessions.Count > MostNamed ? $" and {sessions.Count - MostNamed} before" : "");
}
