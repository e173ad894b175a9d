using RackSide.Training.Body;
using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>All is done: digits tell a body weight, ENTER closes the session and leaves.</summary>
internal static class FinishingStep
{
    public static Turn Step(Session s, Finishing p, SessionEvent e) => e switch
    {
        DigitTyped d => Typed(s, p, (char)('0' + d.Digit)),
        PointTyped when p.Typed.Length > 0 => Typed(s, p, '.'),
        BackAsked or MenuAsked or UndoAsked when p.Typed.Length > 0 => s with { Phase = p with { Typed = "" } },
        Accepted when p.Typed.Length == 0 => Close(s),
        Accepted => WeighAndClose(s, p),
        _ => SessionSteps.Anywhere(s, e),
    };

    private static Session Typed(Session s, Finishing p, char more) => s with { Phase = p with { Typed = BodyWeightEntry.Add(p.Typed, more) } };

    private static Turn WeighAndClose(Session s, Finishing p) => BodyWeightEntry.Read(p.Typed, s.Setting.Lifter.Unit) is { } weight
        ? Close(((Turn)s).Keep((id, at) => new BodyWeighed(id, at, weight)))
        : ((Turn)(s with { Phase = p with { Typed = "" } })).Say(BodyWeightEntry.Refusal(s.Setting.Lifter.Unit));

    private static Turn Close(Turn turn) =>
        turn.Keep((id, at) => new SessionClosed(id, at)).Enter(new Ended(turn.Session.Now)).Ask(new Leave());
}
