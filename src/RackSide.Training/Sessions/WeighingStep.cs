using RackSide.Training.Body;
using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>A body weight from the menu: digits and the decimal mark, ENTER writes it.</summary>
internal static class WeighingStep
{
    public static Turn Step(Session s, Choosing p, SessionEvent e) => e switch
    {
        DigitTyped d => s with { Phase = p with { Typed = BodyWeightEntry.Add(p.Typed, (char)('0' + d.Digit)), Doubt = null } },
        PointTyped => s with { Phase = p with { Typed = BodyWeightEntry.Add(p.Typed, '.'), Doubt = null } },
        UndoAsked => s with { Phase = p with { Typed = "", Doubt = null } },
        Accepted when p.Typed.Length == 0 => s with { Phase = p.Under },
        Accepted => Write(s, p),
        _ => SessionSteps.NothingHere(s),
    };

    private static Turn Write(Session s, Choosing p) => BodyWeightEntry.Read(p.Typed, s.Setting.Lifter.Unit) is not { } weight
        ? ((Turn)(s with { Phase = p with { Typed = "" } })).Say(BodyWeightEntry.Refusal(s.Setting.Lifter.Unit))
        : p.Doubt is null && EntryDoubt.Of(weight, s.Setting.WeighIns, s.Setting.Lifter.Body, s.Head.Date) is { } doubt
            ? s with { Phase = p with { Doubt = doubt } }
            : ((Turn)s).Keep((id, at) => new BodyWeighed(id, at, weight)).Enter(p.Under).Say($"{weight} kept");
}
