using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>Another slot first, because its place is free or another's is taken: for today only, and never a change of the plan.</summary>
public static class Ordering
{
    /// <summary>The slots that are not finished, in the order they come, up to nine; the first is in hand.</summary>
    public static IReadOnlyList<Prescription> Ahead(Session s)
    {
        var open = s.Place.Agenda.OfType<SlotItem>().Where(i => !s.Place.IsPast(i)).Select(i => i.Slot).ToHashSet();
        return [.. s.Place.Prescriptions.Where(p => open.Contains(p.Slot)).Take(9)];
    }

    internal static Turn Choose(Session s, Reading p, int line)
    {
        var ahead = Ahead(s);
        if (line > ahead.Count)
        {
            return SessionSteps.NothingHere(s);
        }

        var next = ahead[line - 1];
        var turn = AsItStood(((Turn)s).Keep((id, at) => new SlotMoved(id, at, next.Slot)), p.Under);
        return turn
            .Enter(p.Under is Resting ? p.Under : Phases.For(turn.Session.Place.Current, s.Now, null))
            .Say($"{s.Setting.Catalogue[next.Exercise].Name} next, for today only");
    }

    /// <summary>The rest stays as it is, or over: after a kill it must not be reckoned anew from what comes now.</summary>
    private static Turn AsItStood(Turn turn, Phase under) => under is Resting rest
        ? turn.Keep((id, at) => new RestChanged(id, at, rest.Clock.Ends, rest.Clock.Left(at)))
        : turn.Session.LastSet is null ? turn : turn.Keep((id, at) => new RestChanged(id, at, at, Duration.Zero));
}
