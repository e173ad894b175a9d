using System.Diagnostics;

namespace RackSide.Training.Sessions;

/// <summary>A choice lies over the session: a digit chooses a line, 0 or / or Esc goes back, and clocks run on.</summary>
internal static class ChoosingStep
{
    public static Turn Step(Session s, Choosing p, SessionEvent e) => (p.What, e) switch
    {
        (_, Ticked) => Covered.Tick(s, p.Under, e, under => p with { Under = under }),
        (_, BackAsked or MenuAsked) => s with { Phase = p.Under },
        (Choice.NoteText, _) => Noting.Type(s, p, e),
        (Choice.BodyWeight, _) => WeighingStep.Step(s, p, e),
        (_, DigitTyped { Digit: 0 }) => s with { Phase = p.Under },
        (Choice.Menu, DigitTyped d) => FromMenu(s, p, d.Digit),
        (Choice.Menu, OtherAsked) => s with { Phase = p with { What = Choice.More } },
        (Choice.More, DigitTyped d) => FromMore(s, p, d.Digit),
        (Choice.Note, DigitTyped d) => Noting.Choose(s, p, d.Digit),
        (Choice.OtherExercise, DigitTyped d) => Swapping.Choose(s, p, d.Digit),
        (Choice.CutShort, DigitTyped d) => CuttingShort.Choose(s, p, d.Digit),
        (Choice.Leaving, Accepted) => ((Turn)(s with { Phase = p.Under })).Ask(new Leave()),
        (_, UndoAsked or PointTyped) => Undoing.Last(s with { Phase = p.Under }),
        (_, LeafAsked leaf) => s with { Phase = new Reading(s.Now, leaf.What, p.Under) },
        (_, LeaveAsked) => s with { Phase = p with { What = Choice.Leaving } },
        (_, Accepted or MoreAsked or FewerAsked or OtherAsked or DigitTyped or OddKey or TextTyped) => SessionSteps.NothingHere(s),
        _ => throw new UnreachableException(),
    };

    private static Turn FromMore(Session s, Choosing p, int line) => line switch
    {
        1 when s.LastSet is not null => s with { Phase = p with { What = Choice.Note, OnSet = true } },
        2 => s with { Phase = p with { What = Choice.Note, OnSet = false } },
        3 => s with { Phase = new Reading(s.Now, Leaf.LookBack, p.Under) },
        4 => s with { Phase = new Reading(s.Now, Leaf.LookAhead, p.Under) },
        5 => ((Turn)(s with { Phase = p.Under })).Ask(new OpenSettings()),
        _ => SessionSteps.NothingHere(s),
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
