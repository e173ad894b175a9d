using RackSide.Training.Body;
using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>A body weight from the menu: digits and the decimal mark, ENTER writes it.</summary>
internal static class WeighingStep
{
    public static Turn Step(Session s, Choosing p, SessionEvent e) => e switch
    {
        DigitTyped d => s with { Phase = p with { Typed = BodyWeightEntry.Add(p.Typed, (char)('0' + d.Digit)) } },
        PointTyped => s with { Phase = p with { Typed = BodyWeightEntry.Add(p.Typed, '.') } },
        UndoAsked => s with { Phase = p with { Typed = "" } },
        Accepted when p.Typed.Length == 0 => s with { Phase = p.Under },
        Accepted => Write(s, p),
        _ => SessionSteps.NothingHere(s),
    };

    private static Turn Write(Session s, Choosing p) => BodyWeightEntry.Read(p.Typed, s.Setting.Lifter.Unit) is { } weight
        ? ((Turn)s).Keep((id, at) => new BodyWeighed(id, at, weight)).Enter(p.Under).Say($"{weight} kept")
        : ((Turn)(s with { Phase = p with { Typed = "" } })).Say(BodyWeightEntry.Refusal(s.Setting.Lifter.Unit));
}
