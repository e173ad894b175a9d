using System.Diagnostics;
using RackSide.Training.History;
using RackSide.Training.Plans;
using RackSide.Training.Safety;

namespace RackSide.Training.Sessions;

/// <summary>The order of a session: what is confirmed first, then slot by slot, and groups a set of each in turn.</summary>
public static class Agenda
{
    /// <summary>All items of a session as far as its facts tell them, in order; a search grows with its answers.</summary>
    /// <param name="checks">The do-confirm items.</param>
    /// <param name="prescriptions">What each slot asks for, in order.</param>
    /// <param name="searching">The searches of the session.</param>
    internal static IReadOnlyList<AgendaItem> For(
        IEnumerable<CheckItem> checks, IReadOnlyList<Prescription> prescriptions, Searching searching)
    {
        List<AgendaItem> items = [.. checks.Select(c => new ConfirmItem(c))];
        for (var i = 0; i < prescriptions.Count;)
        {
            var together = prescriptions.Skip(i)
                .TakeWhile(p => p == prescriptions[i] || (p.Group is not null && p.Group == prescriptions[i].Group))
                .ToList();
            items.AddRange(together.SelectMany(asked => RampOf(asked, searching)));
            items.AddRange(InTurn(together.Select(WorkOf).ToList()));
            i += together.Count;
        }

        return items;
    }

    private static IEnumerable<AgendaItem> RampOf(Prescription asked, Searching searching) => asked.Search is { } span
        ? searching.Items(asked, span)
        : asked.Ramp.Select((set, i) => new RampItem(asked, i + 1, asked.Ramp.Count, set.Reps, set.Load));

    /// <summary>The work of a slot, round by round; a round is one item, or a hold on both sides.</summary>
    private static IReadOnlyList<IReadOnlyList<AgendaItem>> WorkOf(Prescription asked) => asked.Scheme switch
    {
        Scheme.Total => [[new TotalItem(asked, asked.Targets[0])]],
        Scheme.Accumulate => [[new AccumulateItem(asked, asked.Targets[0])]],
        Scheme.Tick tick => [[new TickItem(asked, tick.Minutes)]],
        Scheme.Hold => [.. asked.Targets.Select((t, i) => Hold(new HoldItem(asked, i + 1, asked.Targets.Count, t, asked.Load)))],
        Scheme.Fixed or Scheme.Range =>
            [.. asked.Targets.Select((t, i) => (AgendaItem[])[new WorkItem(asked, i + 1, asked.Targets.Count, t, asked.Load)])],
        _ => throw new UnreachableException(),
    };

    private static AgendaItem[] Hold(HoldItem hold) => hold.Asked.EachSide ? [hold.On(Side.Left), hold.On(Side.Right)] : [hold];

    private static IEnumerable<AgendaItem> InTurn(IReadOnlyList<IReadOnlyList<IReadOnlyList<AgendaItem>>> slots) =>
        Enumerable.Range(0, slots.Max(s => s.Count)).SelectMany(round => slots.Where(s => round < s.Count).SelectMany(s => s[round]));
}
