using RackSide.Training.History;
using RackSide.Training.Progression;

namespace RackSide.Training.Sessions;

/// <summary>
/// The search for a first load, folded from the facts: its sets are warm-up sets, its answers are told of them, and what it
/// found is what the rule says of both. So an undo, a resume and a swap need nothing of their own.
/// </summary>
internal sealed class Searching(SessionRecord record)
{
    private readonly Lazy<ILookup<(string Slot, string Exercise), SetResult>> warmUps = new(() =>
        record.Sets.Where(s => s.Set.Kind == SetKind.WarmUp).ToLookup(s => (s.Set.Slot, s.Set.Exercise)));

    private readonly Lazy<Dictionary<FactId, int>> left = new(() =>
        record.Standing.OfType<RepsLeftTold>().GroupBy(t => t.Set).ToDictionary(g => g.Key, g => g.Last().Left));

    /// <summary>What a slot asks for now: the load that its search found, with the reason; as prescribed until then.</summary>
    public Prescription Settled(Prescription asked) => asked.Search is { } span && Next(asked, span) is SearchStep.Found found
        ? asked with { Load = found.Load, Why = found.Why.Advise(asked.Why.Advice) }
        : asked;

    /// <summary>The search sets done, each with its question where it has one, and then the set to try, if any.</summary>
    public IEnumerable<AgendaItem> Items(Prescription asked, SearchSpan span)
    {
        foreach (var set in Done(asked))
        {
            yield return new SearchItem(asked, set.Set.Number, set.Set.Target, set.Set.Load);
            if (!Told(set).Short)
            {
                yield return new AskItem(asked, set.Set.Number, set.Set.Id);
            }
        }

        if (Next(asked, span) is SearchStep.Try { Load: var load })
        {
            yield return new SearchItem(asked, NextNumber(asked.Slot), span.Reps, load);
        }
    }

    /// <summary>What would follow if the newest search set left so many reps.</summary>
    public SearchStep IfLeft(Prescription asked, SearchSpan span, int reps)
    {
        var sets = Done(asked).Select(Told).ToList();
        return LoadSearch.Next(span, [.. sets.SkipLast(1), .. sets.TakeLast(1).Select(s => s with { Left = reps })]);
    }

    private SearchStep Next(Prescription asked, SearchSpan span) => LoadSearch.Next(span, [.. Done(asked).Select(Told)]);

    private IEnumerable<SetResult> Done(Prescription asked) => warmUps.Value[(asked.Slot, asked.Exercise)].Where(s => s.Set.Load is not null);

    private SearchSet Told(SetResult set) => new(
        set.Set.Load!.Value,
        set.Set.Target,
        set.Set.Done,
        left.Value.TryGetValue(set.Set.Id, out var reps) ? reps : null,
        set.FormSlipped);

    /// <summary>After a swap the numbers go on, so that no set is taken for one of the exercise before.</summary>
    private int NextNumber(string slot) =>
        record.Sets.Where(s => s.Set.Kind == SetKind.WarmUp && s.Set.Slot == slot).Select(s => s.Set.Number).DefaultIfEmpty().Max() + 1;
}
