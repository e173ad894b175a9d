using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>A check or a checklist item is in hand: ENTER ticks it, + ticks all checks, * leaves a slot out.</summary>
internal static class TickingStep
{
    public static Turn Step(Session s, SessionEvent e) => (e, s.Place.Current) switch
    {
        (Accepted, { } item) => Tick(s, item).Proceed(),
        (MoreAsked, ConfirmItem) => TickAllChecks(s).Proceed(),
        (OtherAsked, TickItem item) => LeaveOut(s, item),
        _ => SessionSteps.Anywhere(s, e),
    };

    private static Turn Tick(Turn turn, AgendaItem item) =>
        turn.Keep((id, at) => new ItemTicked(id, at, item is ConfirmItem c ? c.Check.Key : ((SlotItem)item).Slot));

    private static Turn TickAllChecks(Session s) =>
        s.Place.Agenda.OfType<ConfirmItem>().Where(c => !s.Place.IsPast(c)).Aggregate((Turn)s, Tick);

    private static Turn LeaveOut(Turn turn, TickItem item) =>
        turn.Keep((id, at) => new SlotLeftOut(id, at, item.Slot)).Say("left out; . takes that back").Proceed();
}
