using System.Diagnostics;
using NodaTime;

namespace RackSide.Training.Sessions;

/// <summary>The one way a session changes: an event in, the session after it and what the world is asked to do out.</summary>
public static class SessionSteps
{
    /// <summary>The same key again within this time is a bounce of a worn key, not a press.</summary>
    public static Duration Bounce { get; } = Duration.FromMilliseconds(300);

    /// <summary>After the screen turned by itself ENTER is dead for this long, because it was meant for the page before.</summary>
    public static Duration DeadTime { get; } = Duration.FromMilliseconds(1500);

    /// <summary>Takes an event.</summary>
    /// <param name="session">The session before.</param>
    /// <param name="e">The event. An instant before the session's own is taken as the session's own.</param>
    public static Turn Step(Session session, SessionEvent e)
    {
        var now = Instant.Max(e.At, session.Now);
        var s = session with { Now = now, Notice = session.Notice is { } n && n.Until > now ? n : null };
        return e switch
        {
            FactWritten w => s with { Unwritten = s.Unwritten.Remove(w.Fact), WriteTrouble = null },
            WriteFailed f => s with { WriteTrouble = f.Sentence },
            Accepted when s.LastAccept is { } last && now - last < Bounce => s with { LastAccept = now },
            Accepted => InPhase(s with { LastAccept = now }, e),
            Ticked => InPhase(s, e),
            _ => InPhase(s with { LastAccept = null }, e),
        };
    }

    internal static Turn InPhase(Session s, SessionEvent e) => s.Phase switch
    {
        Ticking ticking when s.Place.Current is HeadDownItem => HeadDownStep.Step(s, ticking, e),
        Ticking => TickingStep.Step(s, e),
        Lifting lifting => LiftingStep.Step(s, lifting, e),
        Asking asking => AskingStep.Step(s, asking, e),
        Resting resting => RestingStep.Step(s, resting, e),
        Holding holding => HoldingStep.Step(s, holding, e),
        Choosing choosing => ChoosingStep.Step(s, choosing, e),
        Reading reading => ReadingStep.Step(s, reading, e),
        Finishing finishing => FinishingStep.Step(s, finishing, e),
        Ended => s,
        _ => throw new UnreachableException(),
    };

    /// <summary>What the keys for pages do wherever a session stands; everything else changes nothing and says so.</summary>
    internal static Turn Anywhere(Session s, SessionEvent e) => e switch
    {
        Ticked or FactWritten or WriteFailed or BackAsked => s,
        MenuAsked => s with { Phase = new Choosing(s.Now, Choice.Menu, s.Phase) },
        LeafAsked leaf => s with { Phase = new Reading(s.Now, leaf.What, s.Phase) },
        LeaveAsked => s with { Phase = new Choosing(s.Now, Choice.Leaving, s.Phase) },
        UndoAsked or PointTyped => Undoing.Last(s),
        Accepted or DigitTyped or MoreAsked or FewerAsked or OtherAsked or OddKey or TextTyped => NothingHere(s),
        _ => throw new UnreachableException(),
    };

    internal static Turn NothingHere(Session s) => ((Turn)s).Say("that key does nothing here; / is the menu", Duration.FromSeconds(2));
}
