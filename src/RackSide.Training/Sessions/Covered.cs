namespace RackSide.Training.Sessions;

/// <summary>Time goes on under a menu or a card: a rest that ends there turns and rings as if nothing lay over it.</summary>
internal static class Covered
{
    public static Turn Tick(Session s, Phase under, SessionEvent tick, Func<Phase, Phase> cover)
    {
        var turn = SessionSteps.InPhase(s with { Phase = under }, tick);
        return turn.Enter(cover(turn.Session.Phase));
    }
}
