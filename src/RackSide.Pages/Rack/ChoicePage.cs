using System.Diagnostics;
using RackSide.Training.Measures;
using RackSide.Training.Safety;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>Choices over a session, with the running clock in the corner.</summary>
internal static class ChoicePage
{
    public static Page Draw(Session s, Choosing p, PageSize size)
    {
        BodyPage page = p.What switch
        {
            Choice.Menu => Menu(s, size),
            Choice.OtherExercise => OtherExercise(s),
            Choice.CutShort => new TextPage("CUT SHORT", [.. Numbered(CuttingShort.Lines), "What is not done is left out, which is no miss."]),
            Choice.BodyWeight => new EntryPage("BODY WEIGHT", "As the scale shows it:", p.Typed, EntryPage.NumberRoom)
            {
                Unit = s.Setting.Lifter.Unit.Symbol(),
                Below = p.Doubt is { } doubt ? $"{doubt}. ENTER again keeps it." : "",
            },
            Choice.More => new TextPage("MORE", [.. Numbered(["note on the last set", "note on the session", "look back at this exercise", "look ahead", "settings: screen, sound, keys"])]),
            Choice.Note => new TextPage(p.OnSet ? "NOTE ON THE LAST SET" : "NOTE ON THE SESSION", [.. Numbered([.. Noting.Ready, "in your own words"])]),
            Choice.NoteText => new EntryPage(p.OnSet ? "NOTE ON THE LAST SET" : "NOTE ON THE SESSION", "In your own words:", p.Typed, Noting.Room) { TakesLetters = true },
            Choice.Leaving => new TextPage("LEAVE", Leaving(s)),
            _ => throw new UnreachableException(),
        };
        return (page with { Place = Corner(s, p.Under), Said = SessionPages.Told(s), Hints = Hints(s, p.What) }).Draw(size);
    }

    /// <summary>What the clock under a page shows.</summary>
    internal static string Corner(Session s, Phase under) => under switch
    {
        Resting { Clock: { } clock } => $"{(clock.IsHeld ? "held" : "rest")} {Words.Clock(clock.Left(s.Now))}",
        Lifting { Rested.Ends: { } ended } => $"rest over, +{Words.Gone(s.Now - ended)}",
        _ => "",
    };

    /// <summary>The stop signs stand under the menu, so that one key from any page shows them.</summary>
    private static TextPage Menu(Session s, PageSize size)
    {
        string[] lines = size.Compact
            ? ["1 plan, order | 2 other exercise | 3 stop signs", "4 cue card | 5 cut short, tick | 6 body weight", "7 sore motion | 8 leave | 9 help: the keys"]
            : ["1  today's plan, and its order", "2  other exercise, for today", "3  stop signs in full", "4  cue card", "5  cut short, leave out, tick", "6  body weight", "7  this motion is sore", "8  leave", "9  help: the keys"];
        var shown = s.Setting.Lifter.Body.Hidden ? lines.Select(l => l.Replace(" | 6 body weight", "", StringComparison.Ordinal)).Where(l => l != "6  body weight") : lines;
        return new TextPage("MENU", [.. shown, .. Shared(s), $"STOP at once for {StopSigns.Brief}.", StopSigns.WhatToDo[0]]);
    }

    private static IEnumerable<string> Shared(Session s) =>
        s.Share is null ? [] : [$"*  the bar shared with {s.Share.With}: turns, form, leaving"];

    private static TextPage OtherExercise(Session s)
    {
        var offers = Swapping.Offers(s);
        return new TextPage("OTHER EXERCISE, for today", offers.Count == 0
            ? ["Nothing else of this motion fits this gym's kit."]
            : [.. Numbered(offers.Select(o => $"{s.Setting.Catalogue[o.Exercise].Name}{(o.Load is { Amount: > 0 } l ? $", {l}" : "")}"))]);
    }

    private static IReadOnlyList<string> Leaving(Session s) =>
    [
        s.Unwritten.IsEmpty && s.WriteTrouble is null ? "All is written." : "Not all is written yet: wait a moment.",
        "The session stays open: the next start goes on at the same set, and a running rest goes on by the clock.",
    ];

    private static IEnumerable<string> Numbered(IEnumerable<string> lines) => lines.Select((l, i) => $"{i + 1}  {l}");

    private static IReadOnlyList<KeyHint> Hints(Session s, Choice what) => what switch
    {
        Choice.BodyWeight => [new("ENTER", "write it"), new("0-9 .", "type it"), new("/", "back, nothing kept")],
        Choice.NoteText => [new("ENTER", "keep it"), new("letters", "type it"), new("ESC", "back, nothing kept")],
        Choice.Menu => [new("1-9", "choose"), new("0", "back"), new(KeyTable.Pad(Verb.Other), "more: notes, settings", "more"), Hint.Undo(s)],
        Choice.Leaving => [new("ENTER", "leave"), new("0", "back to the session")],
        _ => [new("1-9", "choose"), new("0", "back"), Hint.Undo(s)],
    };
}
