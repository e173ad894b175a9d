using NodaTime;

namespace RackSide.Training.History;

/// <summary>
/// One training day performed on one date: its head and its facts. Everything else here is folded from them, so that a
/// struck set is gone from every reckoning while the logbook still holds it.
/// </summary>
/// <param name="Head">What was settled when it began.</param>
/// <param name="Facts">In the order written.</param>
public sealed record SessionRecord(SessionHead Head, IReadOnlyList<Fact> Facts)
{
    /// <summary>The day it belongs to: the one it began on, or the one it was given when that proved wrong.</summary>
    public LocalDate Date => Facts.Any(f => f is SessionRedated) && Standing.OfType<SessionRedated>().LastOrDefault() is { } mended
        ? mended.Date
        : Head.Date;

    /// <summary>Whether it is over.</summary>
    public bool Closed => Standing.OfType<SessionClosed>().Any();

    /// <summary>The facts that no later fact struck, without the strikes.</summary>
    public IReadOnlyList<Fact> Standing => Facts.Standing();

    /// <summary>What each slot asks for after swaps, in order.</summary>
    public IReadOnlyList<Prescription> Prescriptions
    {
        get
        {
            var swaps = Standing.OfType<ExerciseSwapped>().ToLookup(s => s.Slot);
            return [.. Head.Prescriptions.Select(p => swaps[p.Slot].LastOrDefault()?.Filled ?? p)];
        }
    }

    /// <summary>The sets that stand, in the order done, each with the word on its form.</summary>
    public IReadOnlyList<SetResult> Sets
    {
        get
        {
            var standing = Standing;
            var slipped = standing.OfType<FormTold>().GroupBy(f => f.Set).ToDictionary(g => g.Key, g => g.Last().Slipped);
            return [.. standing.OfType<SetDone>().Select(s => new SetResult(s, slipped.GetValueOrDefault(s.Id)))];
        }
    }

    /// <summary>The slots left out.</summary>
    public IReadOnlySet<string> LeftOut => Standing.OfType<SlotLeftOut>().Select(s => s.Slot).ToHashSet();
}

/// <summary>A set as it counts.</summary>
/// <param name="Set">The set.</param>
/// <param name="FormSlipped">Whether its form was told to have slipped.</param>
public sealed record SetResult(SetDone Set, bool FormSlipped)
{
    /// <summary>Whether it earns progress: the target met with honest form.</summary>
    public bool OnTarget => Set.Done >= Set.Target && !FormSlipped;
}
