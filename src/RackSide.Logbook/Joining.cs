using RackSide.Logbook.Copies;
using RackSide.Logbook.Storing;
using RackSide.Training.History;

namespace RackSide.Logbook;

/// <summary>
/// Joins a record with a logbook: everything that either has, by identity. What both have stays as it is here, a session
/// with the facts that only the record has at its end. Neither of the two changes.
/// </summary>
public static class Joining
{
    /// <summary>Both together.</summary>
    /// <param name="here">The logbook.</param>
    /// <param name="there">The record.</param>
    /// <exception cref="LogbookUnreadableException">The record has something of a lifter that it does not name.</exception>
    public static Joined Of(LogbookSnapshot here, LogbookSnapshot there)
    {
        var (old, record) = (here.Contents, there.Contents);
        CheckLifters(record);
        var keys = Keys([.. old.Lifters], [.. record.Lifters]);
        var whole = old.As(old.Rack, old.Writes);
        var known = old.Lifters.Select(l => l.Key).ToHashSet();
        List<Lifter> lifters = [.. record.Lifters.Where(l => !known.Contains(keys[l.Key]))];
        var met = record.Lifters.Count() - lifters.Count;
        lifters.ForEach(l => whole.Take(new Entry.LifterKept(l with { Key = keys[l.Key] })));
        var (sessions, facts) = (0, 0);
        foreach (var session in record.Sessions)
        {
            var taken = whole.Take(session with { Head = session.Head with { Lifter = keys[session.Head.Lifter] } }) is not null;
            var missing = taken ? 0 : session.Facts.Count(f => whole.Take(new Entry.FactAdded(session.Head.Id, f)) is not null);
            (sessions, facts, met) = (sessions + (taken ? 1 : 0), facts + missing, met + (taken || missing > 0 ? 0 : 1));
        }

        List<KeptWeight> weights = [.. record.Weights];
        var weighed = weights.Count(w => whole.Take(new Entry.WeightKept(w with { Lifter = keys[w.Lifter] })) is not null);
        List<KeptFact> told = [.. record.Told];
        var heard = told.Count(t => whole.Take(new Entry.FactTold(t with { Lifter = keys[t.Lifter] })) is not null);
        met += weights.Count - weighed + told.Count - heard;
        return new Joined(new LogbookSnapshot(whole), lifters.Count, sessions, facts, weighed, heard, met);
    }

    private static void CheckLifters(Contents record)
    {
        var named = record.Lifters.Select(l => l.Key).ToHashSet();
        var of = record.Sessions.Select(s => (s.Head.Lifter, What: $"the session \"{s.Head.Id}\""))
            .Concat(record.Weights.Select(w => (w.Lifter, What: $"the weigh-in \"{w.Id}\"")))
            .Concat(record.Told.Select(t => (t.Lifter, What: $"the fact \"{t.Fact.Id}\"")));
        if (of.FirstOrDefault(o => !named.Contains(o.Lifter)) is { What: { } what } orphan)
        {
            throw new LogbookUnreadableException($"this is no record of RackSide that can be read: {what} is of \"{orphan.Lifter}\", who is not in \"lifters\"");
        }
    }

    // A first lifter has the same key on every rack, so a key alone does not tell who somebody is. Who joined at the same
    // moment, or goes by the same key and name, is the same person; another one gets a key of their own.
    private static Dictionary<string, string> Keys(List<Lifter> here, List<Lifter> there)
    {
        var taken = here.Concat(there).Select(l => l.Key).ToHashSet();
        var keys = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var one in there)
        {
            var same = here.Find(l => l.Key == one.Key);
            var known = same is not null && (same.Joined == one.Joined || same.Name == one.Name) ? same : here.Find(l => l.Name == one.Name && l.Joined == one.Joined);
            keys[one.Key] = known?.Key ?? (same is null ? one.Key : Free(one.Key, taken));
        }

        return keys;
    }

    private static string Free(string key, HashSet<string> taken)
    {
        var free = Enumerable.Range(2, int.MaxValue - 2).Select(n => $"{key}-{n}").First(k => !taken.Contains(k));
        taken.Add(free);
        return free;
    }
}
