using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Sessions;

/// <summary>A set is in hand: ENTER writes it as shown; digits, steps and the other number change what is shown.</summary>
internal static class LiftingStep
{
    private const int MostDigits = 6;

    public static Turn Step(Session s, Lifting p, SessionEvent e) => e switch
    {
        Accepted => SetAccepting.Accept(s, p),
        DigitTyped d => Type(s, p, d.Digit.ToString(System.Globalization.CultureInfo.InvariantCulture)),
        PointTyped when p.Field == Field.Load => Type(s, p, p.Typed.Length == 0 ? "0." : p.Typed.Contains('.') ? "" : "."),
        PointTyped or UndoAsked when p.Changed => AsAsked(s, p),
        MoreAsked => StepBy(s, p, +1),
        FewerAsked => StepBy(s, p, -1),
        OtherAsked => Other(s, p),
        BackAsked or MenuAsked when p.Changed => AsAsked(s, p),
        Ticked => LateBell(s, p),
        _ => SessionSteps.Anywhere(s, e),
    };

    private static Turn Type(Session s, Lifting p, string text) => p.Typed.Length + text.Length <= MostDigits
        ? s with { Phase = p with { Typed = p.Typed + text, Doubt = null } }
        : ((Turn)s).Say("that number is too long; / clears it");

    private static Session AsAsked(Session s, Lifting p) =>
        s with { Phase = p with { Field = Field.Reps, Typed = "", Reps = null, Load = null, Doubt = null } };

    private static Turn StepBy(Session s, Lifting p, int direction) => p.Field == Field.Load
        ? StepLoad(s, p, direction)
        : s with
        {
            Phase = p with { Typed = "", Reps = Math.Clamp(SetInHand.Reps(s, p) + direction, 0, 999), Doubt = null },
        };

    private static Turn StepLoad(Session s, Lifting p, int direction)
    {
        if (SetInHand.Loads(s) is not { } loads || SetInHand.Load(s, p) is not { } load)
        {
            return ((Turn)s).Say("this exercise has no load to change");
        }

        var next = direction > 0 ? loads.Above(load) : loads.Below(load);
        return next is { } to
            ? s with { Phase = p with { Typed = "", Load = to, Doubt = null } }
            : ((Turn)s).Say(direction > 0 ? "this kit has nothing heavier" : "this kit has nothing lighter");
    }

    /// <summary>Switching keeps what was typed: "5 * 62.5 ENTER" writes both.</summary>
    private static Turn Other(Session s, Lifting p)
    {
        if (SetInHand.Load(s, p) is null)
        {
            return s with { Phase = new Reading(s.Now, Leaf.CueCard, p) };
        }

        var taken = p with { Reps = SetInHand.TypedReps(p) ?? p.Reps, Load = SetInHand.TypedLoad(s, p) ?? p.Load, Typed = "", Doubt = null };
        return s with { Phase = taken with { Field = p.Field == Field.Reps ? Field.Load : Field.Reps } };
    }

    private static Turn LateBell(Session s, Lifting p) =>
        p is { Rested: { Ends: { } ended }, RangLate: false } && s.Now - ended >= RestClock.LateBell
            ? ((Turn)s).Enter(p with { RangLate = true }).Ring(2)
            : s;
}
