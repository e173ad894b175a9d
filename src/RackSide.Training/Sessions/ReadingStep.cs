namespace RackSide.Training.Sessions;

/// <summary>Something is read: any key goes back, and the phase under it goes on with the clock.</summary>
internal static class ReadingStep
{
    public static Turn Step(Session s, Reading p, SessionEvent e) => e is Ticked
        ? Covered.Tick(s, p.Under, e, under => p with { Under = under })
        : s with { Phase = p.Under };
}
