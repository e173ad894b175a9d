using System.Globalization;
using RackSide.Pages.Rack;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Sharing;

/// <summary>What is said of two lifters on one bar, the same way on every page.</summary>
internal static class SharedWords
{
    /// <summary>How the other stands: <c>Bram rests 1:23</c>, <c>Bram ready</c>.</summary>
    public static string Other(TwoOnOneBar b) => $"{b.Name(1 - b.Turn)} {State(b.Other)}";

    /// <summary>The clock of the other's rest; null where none runs.</summary>
    public static string? OthersClock(TwoOnOneBar b) => b.Other.Phase is Resting { Clock: var clock } ? Words.Clock(clock.Left(b.Other.Now)) : null;

    /// <summary>What stands in the way of writing, a sentence to the one in turn, or one to the other with the name before it.</summary>
    public static string? Told(TwoOnOneBar b) => b.InTurn.WriteTrouble ?? b.Other.WriteTrouble ?? SessionPages.Told(b.InTurn)
        ?? (SessionPages.Told(b.Other) is { } told ? $"{b.Name(1 - b.Turn)}: {told}" : null);

    /// <summary>What became of the newest set: <c>Bram, set 3 written: 60 kg x 5</c>.</summary>
    public static string Written(TwoOnOneBar b) => TwoOnOneBar.LastToLift(b) is var (lifter, _)
        ? $"{b.Name(lifter)}, {RestPage.Written(b.Both[lifter])}"
        : "";

    /// <summary>What undo would take back, and whose it is.</summary>
    public static KeyHint Undo(TwoOnOneBar b) => BarSteps.UndoConcerns(b) is { } owner && Undoing.Next(b.Both[owner]) is { } undo
        ? new(KeyTable.Pad(Verb.Point), $"undo {b.Name(owner)}: {undo.Split(',')[0]}", $"undo {b.Name(owner)}")
        : new(KeyTable.Pad(Verb.Point), "nothing to undo", "no undo");

    /// <summary>The other's turn at once.</summary>
    public static KeyHint GoesNow(TwoOnOneBar b) => new("2", $"{b.Name(1 - b.Turn)} goes now", b.Name(1 - b.Turn));

    /// <summary>A load in the lifter's own unit, where the plates are marked in the other: <c>60 kg = 132.3 lb</c>.</summary>
    public static string InOwnUnit(Session s, Mass load) => load.Unit == s.Setting.Lifter.Unit
        ? ""
        : $"{load} = {load.In(s.Setting.Lifter.Unit).ToString("0.#", CultureInfo.InvariantCulture)} {s.Setting.Lifter.Unit.Symbol()}";

    private static string State(Session s) => s.Phase switch
    {
        Resting { Clock: { IsHeld: true } clock } => $"held {Words.Clock(clock.Left(s.Now))}",
        Resting { Clock: var clock } => $"rests {Words.Clock(clock.Left(s.Now))}",
        _ when s.Place.Current is null => "is through",
        Lifting { Rested.Ends: { } ended } => $"ready +{Words.Gone(s.Now - ended)}",
        _ => "ready",
    };
}
