using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>
/// A note on the last set or on the session: one of a few that are often meant, by a digit, or typed. It is kept and shown
/// again next time, and decides nothing.
/// </summary>
public static class Noting
{
    /// <summary>The most characters of a note.</summary>
    public const int Room = 40;

    /// <summary>The notes one digit writes, 1 first.</summary>
    public static IReadOnlyList<string> Ready { get; } =
        ["felt easy", "felt hard", "grip gave out", "lost balance", "the kit was taken", "slept badly", "in a hurry", "something felt wrong"];

    /// <summary>The line that leads to typing.</summary>
    public const int OwnWords = 9;

    // Console fonts of the Latin family end here; what lies beyond may be drawn as a blank.
    private const char LastLatin = '\u017f';

    internal static Turn Choose(Session s, Choosing p, int line) => line switch
    {
        OwnWords => s with { Phase = p with { What = Choice.NoteText, Typed = "" } },
        _ when line >= 1 && line <= Ready.Count => Keep(s, p, Ready[line - 1]),
        _ => SessionSteps.NothingHere(s),
    };

    internal static Turn Type(Session s, Choosing p, SessionEvent e) => e switch
    {
        TextTyped typed => Add(s, p, typed.Character),
        DigitTyped digit => Add(s, p, (char)('0' + digit.Digit)),
        PointTyped => Add(s, p, '.'),
        UndoAsked => s with { Phase = p with { Typed = p.Typed.Length == 0 ? "" : p.Typed[..^1] } },
        Accepted when p.Typed.Trim().Length == 0 => s with { Phase = p.Under },
        Accepted => Keep(s, p, p.Typed.Trim()),
        _ => SessionSteps.NothingHere(s),
    };

    private static Turn Add(Session s, Choosing p, char character) =>
        character < ' ' || character > LastLatin || char.IsControl(character) ? ((Turn)s).Say("a note takes letters, digits and signs")
        : p.Typed.Length == Room ? ((Turn)s).Say("the note is as long as it can be")
        : s with { Phase = p with { Typed = p.Typed + character } };

    private static Turn Keep(Session s, Choosing p, string text) => ((Turn)s)
        .Keep((id, at) => new NoteTold(id, at, text, p.OnSet ? s.LastSet?.Set.Id : null))
        .Enter(p.Under)
        .Say("noted; . takes that back");
}
