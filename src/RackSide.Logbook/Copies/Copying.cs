using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Copies;

/// <summary>Contents made of other contents, in the same order.</summary>
internal static class Copying
{
    /// <summary>The same under another rack's name, so that no identity is given twice, and with more writes than any before it.</summary>
    /// <param name="contents">What to copy.</param>
    /// <param name="rack">The name of the rack that goes on with it.</param>
    /// <param name="writes">The writes of the logbook it takes the place of.</param>
    public static Contents As(this Contents contents, string rack, long writes) => Copy(contents, rack, writes, _ => true);

    /// <summary>The same without a lifter and all that is theirs.</summary>
    public static Contents Without(this Contents contents, string lifter, string rack) => Copy(contents, rack, contents.Writes, key => key != lifter);

    private static Contents Copy(Contents from, string rack, long writes, Func<string, bool> holds)
    {
        var copy = new Contents(rack) { Writes = Math.Max(from.Writes, writes) + 1, HouseRules = from.HouseRules };
        List<Entry> entries =
        [
            .. from.Lifters.Where(l => holds(l.Key)).Select(l => new Entry.LifterKept(l)),
            .. from.Weights.Where(w => holds(w.Lifter)).Select(w => new Entry.WeightKept(w)),
            .. from.Told.Where(t => holds(t.Lifter)).Select(t => new Entry.FactTold(t)),
        ];
        entries.ForEach(e => copy.Take(e));
        foreach (var session in from.Sessions.Where(s => holds(s.Head.Lifter)))
        {
            copy.Take(session);
        }

        return copy;
    }
}
