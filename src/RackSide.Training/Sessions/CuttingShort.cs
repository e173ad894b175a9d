using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>Ending early. What is not done is left out, which is no miss, and the plan carries on.</summary>
public static class CuttingShort
{
    /// <summary>The lines to choose from, 1 first.</summary>
    public static IReadOnlyList<string> Lines { get; } =
        ["finish this exercise, then stop", "this exercise and one more", "stop now"];

    internal static Turn Choose(Session s, Choosing p, int line)
    {
        if (line > Lines.Count)
        {
            return SessionSteps.NothingHere(s);
        }

        var keep = line == Lines.Count ? 0 : line;
        var ahead = s.Place.Agenda.Skip(s.Place.Index).OfType<SlotItem>().Where(i => !s.Place.IsPast(i));
        var turns = ahead.Select(i => i.Asked.Group ?? i.Slot).Distinct().ToList();
        var left = ahead.Where(i => turns.IndexOf(i.Asked.Group ?? i.Slot) >= keep).Select(i => i.Slot).Distinct();
        var turn = left.Aggregate((Turn)s, (t, slot) => t.Keep((id, at) => new SlotLeftOut(id, at, slot)));
        return (keep == 0 ? turn.Proceed() : turn.Enter(p.Under)).Say("left out, not failed; . takes that back");
    }
}
