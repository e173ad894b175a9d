namespace RackSide.Training.Sessions;

/// <summary>Something is read: - and + move on and back, any other key closes it, and the clock under it goes on.</summary>
internal static class ReadingStep
{
    public static Turn Step(Session s, Reading p, SessionEvent e) => e switch
    {
        Ticked => Covered.Tick(s, p.Under, e, under => p with { Under = under }),
        MoreAsked => s with { Phase = p with { MovedOn = Math.Max(0, p.MovedOn - 1) } },
        FewerAsked => s with { Phase = p with { MovedOn = Math.Min(Reading.MostLines, p.MovedOn + 1) } },
        DigitTyped { Digit: > 0 } digit when p.What == Leaf.TodaysPlan => Ordering.Choose(s, p, digit.Digit),
        _ => s with { Phase = p.Under },
    };
}
