using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>
/// Resting: the clock turns into the next set by itself; ENTER goes early, + and - change it, 0 holds it, 1 tells that
/// the form of the set just done slipped.
/// </summary>
internal static class RestingStep
{
    public static Turn Step(Session s, Resting p, SessionEvent e) => e switch
    {
        Ticked => Pass(s, p),
        Accepted => LiftNow(s),
        MoreAsked => Change(s, p, p.Clock.Add(RestClock.Press, s.Now)),
        FewerAsked => Change(s, p, p.Clock.Add(-RestClock.Press, s.Now)),
        DigitTyped { Digit: 0 } => Change(s, p, p.Clock.Toggle(s.Now)),
        DigitTyped { Digit: 1 } => TellForm(s, p),
        OtherAsked => s with { Phase = new Reading(s.Now, Leaf.CueCard, p) },
        _ => SessionSteps.Anywhere(s, e),
    };

    private static Turn Pass(Session s, Resting p)
    {
        if (p.Clock.IsOver(s.Now))
        {
            return ((Turn)s).Proceed(p.Clock).Ring(2);
        }

        return !p.RangReady && p.Clock.GetReady(s.Now)
            ? ((Turn)s).Enter(p with { RangReady = true }).Ring(1)
            : s;
    }

    /// <summary>Going early is kept, so that a resumed session does not rest again and the logbook knows the rest taken.</summary>
    private static Turn LiftNow(Session s) =>
        ((Turn)s).Keep((id, at) => new RestChanged(id, at, at, Duration.Zero)).Proceed();

    /// <summary>Form that slipped in a search set sends the search back, and what is in hand may be another set of it.</summary>
    private static Turn TellForm(Session s, Resting p)
    {
        var turn = FormTelling.Toggle(s, p.After);
        return turn.Session.Place.Current?.Key == s.Place.Current?.Key ? turn : turn.Proceed();
    }

    private static Turn Change(Session s, Resting p, RestClock clock)
    {
        var turn = ((Turn)s).Keep((id, at) => new RestChanged(id, at, clock.Ends, clock.Left(at)));
        return Pass(turn.Session, p with { Clock = clock }) is var passed && clock.IsOver(s.Now)
            ? passed with { Effects = turn.Effects.AddRange(passed.Effects) }
            : turn.Enter(p with { Clock = clock, RangReady = p.RangReady && clock.Left(s.Now) <= RestClock.ReadyBell });
    }
}
