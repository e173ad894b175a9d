using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;

namespace RackSide.Training.Sessions;

/// <summary>
/// What is on a shared bar, found again from the facts of both sessions in the order written: each set was done with the
/// stack that the screen showed for it.
/// </summary>
internal static class SharedFold
{
    /// <summary>What is on the bar; null for a bare one.</summary>
    public static BarStack? OnBar(TwoOnOneBar b)
    {
        int[] known = [0, 0];
        BarStack? onBar = null;
        foreach (var (lifter, fact) in b.Both.SelectMany((s, i) => s.Facts.Select(f => (Lifter: i, Fact: f))).OrderBy(f => f.Fact.Id))
        {
            if (fact is SetDone set && IsOnBar(b.Both[lifter], set))
            {
                onBar = After(b, known, lifter, set, onBar);
            }

            known[lifter]++;
        }

        return onBar;
    }

    private static bool IsOnBar(Session s, SetDone set) => s.Setting.Catalogue.Find(set.Exercise)?.LoadType == LoadType.Barbell;

    private static BarStack? After(TwoOnOneBar b, int[] known, int lifter, SetDone set, BarStack? onBar)
    {
        List<SessionRecord> then = [.. b.Both.Select((s, i) => new SessionRecord(s.Head, s.Facts.GetRange(0, known[i])))];
        List<Place> places = [.. b.Both.Select((s, i) => Place.Of(s.Setting.Checks, then[i]))];
        List<LifterAtBar> at = [.. b.Both.Select((s, i) => new LifterAtBar(b.Name(i), s.Setting, BarQueue.Of(s.Setting, places[i])))];
        var shared = then[0].SharedWith == b.Both[1].Head.Id && then[1].SharedWith == b.Both[0].Head.Id;
        var order = shared ? BarTurns.OrderFrom(at, lifter, onBar, Done(then)) : null;
        return BarInHand.After(b.Both[lifter].Setting, places[lifter], onBar, set, order is null ? null : BarTurns.Ahead(at, order));
    }

    private static List<(int Lifter, SetDone Set)> Done(List<SessionRecord> then) =>
        [.. then.SelectMany((r, i) => r.Sets.Select(s => (Lifter: i, s.Set))).OrderBy(s => s.Set.Id)];
}
