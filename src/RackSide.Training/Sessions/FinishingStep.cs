using RackSide.Training.Body;
using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>All is done: digits tell a body weight, ENTER closes the session and leaves.</summary>
internal static class FinishingStep
{
    public static Turn Step(Session s, Finishing p, SessionEvent e) => e switch
    {
        DigitTyped or PointTyped when s.Setting.Lifter.Body.Hidden => SessionSteps.NothingHere(s),
        DigitTyped d => Typed(s, p, (char)('0' + d.Digit)),
        PointTyped when p.Typed.Length > 0 => Typed(s, p, '.'),
        BackAsked or MenuAsked or UndoAsked when p.Typed.Length > 0 => s with { Phase = p with { Typed = "", Doubt = null } },
        Accepted when p.Typed.Length == 0 => Close(s),
        Accepted => WeighAndClose(s, p),
        _ => SessionSteps.Anywhere(s, e),
    };

    private static Session Typed(Session s, Finishing p, char more) => s with { Phase = p with { Typed = BodyWeightEntry.Add(p.Typed, more), Doubt = null } };

    private static Turn WeighAndClose(Session s, Finishing p) => BodyWeightEntry.Read(p.Typed, s.Setting.Lifter.Unit) is not { } weight
        ? ((Turn)(s with { Phase = p with { Typed = "" } })).Say(BodyWeightEntry.Refusal(s.Setting.Lifter.Unit))
        : p.Doubt is null && EntryDoubt.Of(weight, s.Setting.WeighIns, s.Setting.Lifter.Body, s.Head.Date) is { } doubt
            ? s with { Phase = p with { Doubt = doubt } }
            : Close(((Turn)s).Keep((id, at) => new BodyWeighed(id, at, weight)));

    private static Turn Close(Turn turn) =>
        turn.Keep((id, at) => new SessionClosed(id, at)).Enter(new Ended(turn.Session.Now)).Ask(new Leave());
}
