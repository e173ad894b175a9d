using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Copies;

/// <summary>Contents made of other contents, in the same order.</summary>
internal static class Copying
{
    /// <summary>The same under another rack's name, so that no identity is given twice, and with more writes than any before it.</summary>
    /// <param name="contents">What to copy.</param>
    /// <param name="rack">The name of the rack that goes on with it.</param>
    /// <param name="writes">The writes of the logbook it takes the place of.</param>
    public static Contents As(this Contents contents, string rack, long writes) => Copy(contents, rack, writes, _ => true, key => key);

    /// <summary>The same without a lifter and all that is theirs.</summary>
    public static Contents Without(this Contents contents, string lifter, string rack) => Copy(contents, rack, contents.Writes, key => key != lifter, key => key);

    /// <summary>The same with other keys for its lifters.</summary>
    /// <param name="contents">What to copy.</param>
    /// <param name="rack">The rack's name.</param>
    /// <param name="keys">Gives the key that takes the place of one; null lets the lifter go.</param>
    public static Contents Renamed(this Contents contents, string rack, Func<string, string?> keys) =>
        Copy(contents, rack, contents.Writes, key => keys(key) is not null, key => keys(key)!);

    /// <summary>The same, the facts of every session in the order of identities.</summary>
    public static Contents InOrder(this Contents contents)
    {
        foreach (var session in contents.Sessions.ToList())
        {
            contents.Replace(session with { Facts = [.. session.Facts.OrderBy(f => f.Id)] });
        }

        return contents;
    }

    private static Contents Copy(Contents from, string rack, long writes, Func<string, bool> holds, Func<string, string> key)
    {
        var copy = new Contents(rack) { Writes = Math.Max(from.Writes, writes) + 1, HouseRules = from.HouseRules, Share = from.Share.For(from.Share.State, holds) };
        List<Entry> entries =
        [
            .. from.Lifters.Where(l => holds(l.Key)).Select(l => new Entry.LifterKept(l with { Key = key(l.Key) })),
            .. from.Weights.Where(w => holds(w.Lifter)).Select(w => new Entry.WeightKept(w with { Lifter = key(w.Lifter) })),
            .. from.Told.Where(t => holds(t.Lifter)).Select(t => new Entry.FactTold(t with { Lifter = key(t.Lifter) })),
        ];
        entries.ForEach(e => copy.Take(e));
        foreach (var session in from.Sessions.Where(s => holds(s.Head.Lifter)))
        {
            copy.Take(session with { Head = session.Head with { Lifter = key(session.Head.Lifter) } });
        }

        return copy;
    }
}
