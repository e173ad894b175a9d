using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>Ending early, or going on without one exercise or without numbers. What is not done is left out, which is no miss, and the plan carries on.</summary>
public static class CuttingShort
{
    /// <summary>The lines to choose from, 1 first.</summary>
    public static IReadOnlyList<string> Lines { get; } =
    [
        "finish this exercise, then stop", "this exercise and one more", "stop now",
        "leave this one out, go on with the next", "done: tick it, without numbers",
    ];

    private const int StopNow = 3, LeaveOut = 4, TickOff = 5;

    internal static Turn Choose(Session s, Choosing p, int line)
    {
        if (line > Lines.Count)
        {
            return SessionSteps.NothingHere(s);
        }

        return line < LeaveOut ? Stop(s, p, line)
            : s.Place.Current is SlotItem item ? One(RestOver(s, p), item, line)
            : SessionSteps.NothingHere(s);
    }

    /// <summary>This slot alone is left out, or ticked by who wants no numbers; the day goes on.</summary>
    private static Turn One(Turn turn, SlotItem item, int line) => line == TickOff
        ? turn.Keep((id, at) => new ItemTicked(id, at, item.Slot)).Proceed().Say("ticked, without numbers; . takes that back")
        : turn.Keep((id, at) => new SlotLeftOut(id, at, item.Slot)).Proceed().Say("left out, not failed; . takes that back");

    /// <summary>A rest that one goes on from is over, also a held one; said, because after a kill it must not run or stand again.</summary>
    private static Turn RestOver(Turn turn, Choosing p) =>
        p.Under is Resting ? turn.Keep((id, at) => new RestChanged(id, at, at, Duration.Zero)) : turn;

    private static Turn Stop(Session s, Choosing p, int line)
    {
        var keep = line == StopNow ? 0 : line;
        var ahead = s.Place.Agenda.Skip(s.Place.Index).OfType<SlotItem>().Where(i => !s.Place.IsPast(i));
        var turns = ahead.Select(i => i.Asked.Group ?? i.Slot).Distinct().ToList();
        var left = ahead.Where(i => turns.IndexOf(i.Asked.Group ?? i.Slot) >= keep).Select(i => i.Slot).Distinct();
        var turn = left.Aggregate(keep == 0 ? RestOver(s, p) : s, (t, slot) => t.Keep((id, at) => new SlotLeftOut(id, at, slot)));
        return (keep == 0 ? turn.Proceed() : turn.Enter(p.Under)).Say("left out, not failed; . takes that back");
    }
}
