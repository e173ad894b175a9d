using System.Globalization;
using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Sessions;

/// <summary>A hold: ENTER starts the lead-in, ENTER again writes the seconds, 0 is a false start.</summary>
internal static class HoldingStep
{
    public static Turn Step(Session s, Holding p, SessionEvent e) => e switch
    {
        Accepted when p.Typed.Length > 0 => Write(s, (int)NumberEntry.Parse(p.Typed)!.Value),
        Accepted when p.Started is null => Start(s, p),
        Accepted => Stop(s, p),
        DigitTyped { Digit: 0 } when p is { Started: not null, Typed: "" } => FalseStart(s, p),
        DigitTyped d => Type(s, p, d.Digit),
        BackAsked or MenuAsked or PointTyped or UndoAsked when p.Typed.Length > 0 => s with { Phase = p with { Typed = "" } },
        OtherAsked => s with { Phase = new Reading(s.Now, Leaf.CueCard, p) },
        Ticked => Bells(s, p),
        _ => SessionSteps.Anywhere(s, e),
    };

    private static Turn Start(Session s, Holding p) => p.Rested is not null && s.Now - p.Since < SessionSteps.DeadTime
        ? ((Turn)s).Say(SetAccepting.JustTurned, Duration.FromSeconds(2))
        : s with { Phase = p with { Started = s.Now, RangStart = false, RangComeDown = false, RangTarget = false } };

    private static Turn FalseStart(Session s, Holding p) =>
        ((Turn)(s with { Phase = p with { Started = null } })).Say("false start; ENTER starts again");

    private static Turn Type(Session s, Holding p, int digit) => p.Typed.Length < 3
        ? s with { Phase = p with { Typed = p.Typed + digit.ToString(CultureInfo.InvariantCulture) } }
        : ((Turn)s).Say("that number is too long; / clears it");

    private static Turn Stop(Session s, Holding p) => HoldInHand.Seconds(s, p) is { } seconds
        ? Write(s, seconds)
        : ((Turn)s).Say("it has not begun; 0 is a false start", Duration.FromSeconds(2));

    private static Turn Write(Session s, int seconds)
    {
        var item = (SlotItem)s.Place.Current!;
        return SetAccepting.After(item, ((Turn)s).Keep((id, at) => item switch
        {
            HoldItem hold => new SetDone(id, at, hold.Slot, hold.Asked.Exercise, SetKind.Hold, hold.Number, hold.Target, seconds, hold.Load) { Side = hold.Side },
            _ => new SetDone(
                id, at, item.Slot, item.Asked.Exercise, SetKind.HeldShare, s.Place.Work(item.Slot).Count() + 1, HoldInHand.Target(s), seconds, null),
        }));
    }

    private static Turn Bells(Session s, Holding p) => HoldInHand.Elapsed(s, p) switch
    {
        null => s,
        { } past when past >= Duration.FromSeconds(HoldInHand.Target(s)) && !p.RangTarget =>
            ((Turn)s).Enter(p with { RangStart = true, RangTarget = true }).Ring(2),
        { } past when HoldInHand.IsHeadDown(s) && past >= Duration.FromSeconds(HoldInHand.Target(s) - HoldInHand.InHand) && !p.RangComeDown =>
            ((Turn)s).Enter(p with { RangStart = true, RangComeDown = true }).Ring(1),
        { } past when past >= Duration.Zero && !p.RangStart => ((Turn)s).Enter(p with { RangStart = true }).Ring(1),
        _ => s,
    };
}
