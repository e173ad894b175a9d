using NodaTime;
using RackSide.Training.Sessions;

namespace RackSide.Pages;

/// <summary>One verb's keys and what it does where. The key bar, the help page and docs/keys.md are made from these.</summary>
/// <param name="Verb">What the key means.</param>
/// <param name="Pad">Its key on the numeric pad as the key bar prints it; empty where the pad has none.</param>
/// <param name="Others">Its other keys, in words.</param>
/// <param name="Lifting">What it does with a set in hand; empty for nothing.</param>
/// <param name="Resting">What it does while a clock runs; empty for nothing.</param>
/// <param name="Choosing">What it does in a menu or list; empty for nothing.</param>
/// <param name="Presses">The presses that mean it.</param>
public sealed record KeyRow(
    Verb Verb, string Pad, string Others, string Lifting, string Resting, string Choosing, IReadOnlyList<KeyPress> Presses);

/// <summary>The keys as data. The numeric pad alone reaches everything; letters are for the left hand or for a keyboard.</summary>
public static class KeyTable
{
    /// <summary>All rows.</summary>
    public static IReadOnlyList<KeyRow> Rows { get; } =
    [
        new(Verb.Accept, "ENTER", "Space", "did it as shown: write it", "lift now; came down", "choose, go on",
            [KeyPress.Enter, KeyPress.Of(' ')]),
        new(Verb.Digit, "0-9", "0 is also Ins, p, s", "type reps or weight", "0 hold or false start, 1 form slipped, 2 other lifter now", "choose that line, 0 back",
            [.. "0123456789ps".Select(KeyPress.Of), new(KeyCode.Insert)]),
        new(Verb.More, "+", "=, Up, d", "one more rep, one step up", "15 s more", "tick all, line down",
            [KeyPress.Of('+'), KeyPress.Of('='), new(KeyCode.Up), KeyPress.Of('d')]),
        new(Verb.Fewer, "-", "Down, a", "one fewer rep, one step down", "15 s less", "line up",
            [KeyPress.Of('-'), new(KeyCode.Down), KeyPress.Of('a')]),
        new(Verb.Other, "*", "w", "to the weight and back", "cue card", "leave that item out; in the menu the shared bar",
            [KeyPress.Of('*'), KeyPress.Of('w')]),
        new(Verb.Menu, "/", "m, Tab", "menu, stop signs; clears typing", "menu, stop signs", "back",
            [KeyPress.Of('/'), KeyPress.Of('m'), new(KeyCode.Tab)]),
        new(Verb.Point, ".", "comma, Del", "undo; decimal mark in a weight", "undo", "decimal mark in a weight",
            [KeyPress.Of('.'), KeyPress.Of(','), new(KeyCode.Delete)]),
        new(Verb.Undo, "", "u, z, Backspace", "undo; clears typing", "undo", "clears typing",
            [new(KeyCode.Backspace), KeyPress.Of('u'), KeyPress.Of('z')]),
        new(Verb.Back, "", "Esc", "clears typing; never leaves", "", "back",
            [KeyPress.Escape]),
        new(Verb.Today, "/ 1", "Home", "today's plan, and its order", "today's plan, and its order", "",
            [new(KeyCode.Home)]),
        new(Verb.LookBack, "/ * 3", "PgUp", "look back", "look back", "before a session: each exercise",
            [new(KeyCode.PageUp)]),
        new(Verb.LookAhead, "/ * 4", "PgDn", "look ahead", "look ahead", "",
            [new(KeyCode.PageDown)]),
        new(Verb.Help, "/ 9", "?, h", "the keys", "the keys", "the keys",
            [KeyPress.Of('?'), KeyPress.Of('h')]),
        new(Verb.StopSigns, "/ 3", "!, x", "when to stop, and what to do then", "when to stop, and what to do then", "when to stop, and what to do then",
            [KeyPress.Of('!'), KeyPress.Of('x')]),
        new(Verb.Leave, "/ 8", "q", "leave; the session stays open", "leave; the session stays open", "leave",
            [KeyPress.Of('q')]),
    ];

    private static readonly Dictionary<KeyPress, Verb> ByPress =
        Rows.SelectMany(r => r.Presses.Select(p => (p, r.Verb))).ToDictionary(p => p.p, p => p.Verb);

    /// <summary>The key of a verb as the key bar prints it.</summary>
    public static string Pad(Verb verb) => Rows.Single(r => r.Verb == verb).Pad;

    /// <summary>What a press means; null where it means nothing.</summary>
    public static Verb? VerbOf(KeyPress press) => ByPress.TryGetValue(Folded(press), out var verb) ? verb : null;

    /// <summary>The event a press sends to a session; null where it means nothing.</summary>
    /// <param name="press">The press.</param>
    /// <param name="now">When.</param>
    /// <param name="letters">Whether letters are typed and mean no verbs.</param>
    public static SessionEvent? EventOf(KeyPress press, Instant now, bool letters = false) =>
        letters && press.Code == KeyCode.Character ? new TextTyped(now, press.Character) : EventOfVerb(press, now);

    private static SessionEvent? EventOfVerb(KeyPress press, Instant now) => VerbOf(press) switch
    {
        Verb.Accept => new Accepted(now),
        Verb.Digit => new DigitTyped(now, char.IsAsciiDigit(press.Character) ? press.Character - '0' : 0),
        Verb.More => new MoreAsked(now),
        Verb.Fewer => new FewerAsked(now),
        Verb.Other => new OtherAsked(now),
        Verb.Menu => new MenuAsked(now),
        Verb.Point => new PointTyped(now),
        Verb.Undo => new UndoAsked(now),
        Verb.Back => new BackAsked(now),
        Verb.Today => new LeafAsked(now, Leaf.TodaysPlan),
        Verb.LookBack => new LeafAsked(now, Leaf.LookBack),
        Verb.LookAhead => new LeafAsked(now, Leaf.LookAhead),
        Verb.Help => new LeafAsked(now, Leaf.Help),
        Verb.StopSigns => new LeafAsked(now, Leaf.StopSigns),
        Verb.Leave => new LeaveAsked(now),
        _ => null,
    };

    private static KeyPress Folded(KeyPress press) => press with { Character = char.ToLowerInvariant(press.Character) };
}
