using System.Diagnostics;

namespace RackSide.Training.Sessions;

/// <summary>A choice lies over the session: a digit chooses a line, 0 or / or Esc goes back, and clocks run on.</summary>
internal static class ChoosingStep
{
    public static Turn Step(Session s, Choosing p, SessionEvent e) => (p.What, e) switch
    {
        (_, Ticked) => Covered.Tick(s, p.Under, e, under => p with { Under = under }),
        (_, BackAsked or MenuAsked) => s with { Phase = p.Under },
        (Choice.BodyWeight, _) => WeighingStep.Step(s, p, e),
        (_, DigitTyped { Digit: 0 }) => s with { Phase = p.Under },
        (Choice.Menu, DigitTyped d) => FromMenu(s, p, d.Digit),
        (Choice.OtherExercise, DigitTyped d) => Swapping.Choose(s, p, d.Digit),
        (Choice.CutShort, DigitTyped d) => CuttingShort.Choose(s, p, d.Digit),
        (Choice.Leaving, Accepted) => ((Turn)(s with { Phase = p.Under })).Ask(new Leave()),
        (_, UndoAsked or PointTyped) => Undoing.Last(s with { Phase = p.Under }),
        (_, HelpAsked) => s with { Phase = new Reading(s.Now, Leaf.Help, p.Under) },
        (_, StopSignsAsked) => s with { Phase = new Reading(s.Now, Leaf.StopSigns, p.Under) },
        (_, LeaveAsked) => s with { Phase = p with { What = Choice.Leaving } },
        (_, Accepted or MoreAsked or FewerAsked or OtherAsked or DigitTyped or OddKey) => SessionSteps.NothingHere(s),
        _ => throw new UnreachableException(),
    };

    private static Turn FromMenu(Session s, Choosing p, int line) => line switch
    {
        1 => s with { Phase = new Reading(s.Now, Leaf.TodaysPlan, p.Under) },
        2 when s.Place.Current is SlotItem => s with { Phase = p with { What = Choice.OtherExercise } },
        3 => s with { Phase = new Reading(s.Now, Leaf.StopSigns, p.Under) },
        4 when s.Place.Current is SlotItem => s with { Phase = new Reading(s.Now, Leaf.CueCard, p.Under) },
        5 when s.Place.Current is not null => s with { Phase = p with { What = Choice.CutShort } },
        6 when !s.Setting.Lifter.Body.Hidden => s with { Phase = p with { What = Choice.BodyWeight } },
        7 when s.Place.Current is SlotItem item => SoreTelling.Tell(s, p, item),
        8 => s with { Phase = p with { What = Choice.Leaving } },
        9 => s with { Phase = new Reading(s.Now, Leaf.Help, p.Under) },
        _ => SessionSteps.NothingHere(s),
    };
}
