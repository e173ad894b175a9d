using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>Hints that stand on several pages, said the same way on each.</summary>
internal static class Hint
{
    public static KeyHint Menu { get; } = new(KeyTable.Pad(Verb.Menu), "menu, stop signs", "menu, STOP");

    public static KeyHint Undo(Session s) => Undoing.Next(s) is { } undo
        ? new KeyHint(KeyTable.Pad(Verb.Point), $"undo: {undo}", $"undo {undo.Split(',')[0]}")
        : new KeyHint(KeyTable.Pad(Verb.Point), "nothing to undo", "no undo");
}
