using RackSide.Commands;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Racks;
using RackSide.Training.Schedule;

namespace RackSide.Racks;

/// <summary>How a rack stands with its gym, in lines.</summary>
internal static class GymText
{
    /// <summary>The lines of <c>rackside gym status</c>.</summary>
    public static IEnumerable<string> Status(Gym gym, ShareStatus? share, GymServerFile? server)
    {
        if (share is not { Joined: true })
        {
            return [share?.Gym is null ? "this rack is in no gym" : $"this rack left its gym; what it wrote since waits for rackside gym join"];
        }

        return
        [
            .. PlainText.Wrap($"rack {share.Rack}, in the gym {share.Gym}"),
            .. server is null ? PlainText.Wrap("where its server is, is not written here any more; say so with rackside gym join") : [],
            share.Whole is not null ? "everything here waits to be sent" : share.Waiting == 0 ? "nothing waits to be sent" : $"{CountsText.Count(share.Waiting, "event")} {(share.Waiting == 1 ? "waits" : "wait")} to be sent",
            .. OpenTwice(gym).SelectMany(o => PlainText.Wrap($"{o.Lifter.Name} has {o.Open.Count} sessions open: {string.Join(", ", o.Open.Select(c => $"{c.Date.Short()} at rack {c.Id.Rack}"))}. Each is kept; go on with or close the one, then the other")),
            .. SameNames(gym.Logbook.Lifters()).SelectMany(n => PlainText.Wrap($"{n.Count()} lifters are called {n.Key}; each keeps a logbook of their own. If it is one person, go on with one of them")),
        ];
    }

    /// <summary>What the logbook holds after joining.</summary>
    public static IEnumerable<string> Holds(LiteLogbook book) =>
    [
        .. PlainText.Wrap($"the logbook: {CountsText.Of(book.Snapshot().Counts)}"),
        .. SameNames(book.Lifters()).SelectMany(n => PlainText.Wrap($"{n.Count()} lifters are called {n.Key}; they are kept apart")),
    ];

    /// <summary>Who has more than one session open.</summary>
    public static IEnumerable<(Lifter Lifter, IReadOnlyList<SessionCard> Open)> OpenTwice(Gym gym) =>
        gym.Logbook.Lifters().Select(l => (l, GymFold.OpenTwice(gym.Logbook.Cards(l.Key)))).Where(o => o.Item2.Count > 0);

    /// <summary>Names that more than one lifter has.</summary>
    public static IEnumerable<IGrouping<string, Lifter>> SameNames(IReadOnlyList<Lifter> lifters) =>
        lifters.GroupBy(l => l.Name, StringComparer.OrdinalIgnoreCase).Where(n => n.Count() > 1);
}
