using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.History;

/// <summary>
/// One training day performed on one date: its head and its facts. Everything else here is folded from them, so that a
/// struck set is gone from every reckoning while the logbook still holds it.
/// </summary>
/// <param name="Head">What was settled when it began.</param>
/// <param name="Facts">In the order written; the list is not changed after it was given here.</param>
public sealed record SessionRecord(SessionHead Head, IReadOnlyList<Fact> Facts)
{
    // Folded at most once: a year's history asks its sessions for the same again and again.
    private IReadOnlyList<Fact>? standing;
    private IReadOnlyList<SetResult>? sets;
    private IReadOnlyList<Performance>? performances;
    private LocalDate? date;
    private bool? trained;

    // A copy may be given other facts, so it takes over nothing that was folded.
    private SessionRecord(SessionRecord other) => (Head, Facts) = (other.Head, other.Facts);

    /// <summary>
    /// The same with one more fact, in the order of identities: what another rack told of it may come late and belong before
    /// what is here.
    /// </summary>
    public SessionRecord With(Fact fact) => this with { Facts = [.. Facts.Append(fact).OrderBy(f => f.Id)] };

    /// <summary>The same with more facts; null where all of them are here already.</summary>
    /// <inheritdoc cref="With(Fact)"/>
    public SessionRecord? With(IReadOnlyCollection<Fact> facts)
    {
        var here = Facts.Select(f => f.Id).ToHashSet();
        List<Fact> more = [.. facts.Where(f => here.Add(f.Id))];
        return more.Count == 0 ? null : this with { Facts = [.. Facts.Concat(more).OrderBy(f => f.Id)] };
    }

    /// <summary>The day it belongs to: the one it began on, or the one it was given when that proved wrong.</summary>
    public LocalDate Date => date ??= Facts.Any(f => f is SessionRedated) && Standing.OfType<SessionRedated>().LastOrDefault() is { } mended
        ? mended.Date
        : Head.Date;

    /// <summary>
    /// Whether it counts as a day trained: it has a working set, hold, share or slot ticked, or is a skills session closed,
    /// whose log is optional.
    /// </summary>
    public bool Trained => trained ??= Sets.Any(s => s.Set.Kind != SetKind.WarmUp)
        || Standing.OfType<ItemTicked>().Any(t => Head.Prescriptions.Any(p => p.Slot == t.Item))
        || (Head.Kind == DayKind.Skills && Closed);

    /// <summary>Whether it is over.</summary>
    public bool Closed => Standing.OfType<SessionClosed>().Any();

    /// <summary>The facts that no later fact struck, without the strikes.</summary>
    public IReadOnlyList<Fact> Standing => standing ??= Facts.Standing();

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
    public IReadOnlyList<SetResult> Sets => sets ??= Told();

    /// <summary>The slots left out.</summary>
    public IReadOnlySet<string> LeftOut => Standing.OfType<SlotLeftOut>().Select(s => s.Slot).ToHashSet();

    /// <summary>The session it shares the bar with, as far as this one knows; null where the bar is the lifter's alone.</summary>
    public FactId? SharedWith => Facts.LastOrDefault(f => f is BarShared or BarLeft) is BarShared shared ? shared.With : null;

    /// <summary>
    /// What was done of each prescription, in order; a total counts its shares by whatever exercise; one with no working set, hold or share that stands is not among them.</summary>
    internal IReadOnlyList<Performance> Performances => performances ??= [.. Done()];

    /// <inheritdoc/>
    public bool Equals(SessionRecord? other) => other is not null && Head.Equals(other.Head) && Facts.Equals(other.Facts);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Head, Facts);

    private IReadOnlyList<SetResult> Told()
    {
        var slipped = Standing.OfType<FormTold>().GroupBy(f => f.Set).ToDictionary(g => g.Key, g => g.Last().Slipped);
        return [.. Standing.OfType<SetDone>().Select(s => new SetResult(s, slipped.GetValueOrDefault(s.Id)))];
    }

    private IEnumerable<Performance> Done()
    {
        var work = Sets.Where(s => s.Set.Kind != SetKind.WarmUp).ToLookup(s => (s.Set.Slot, s.Set.Exercise));
        var shares = Sets.Where(s => s.Set.Kind != SetKind.WarmUp).ToLookup(s => s.Set.Slot);
        var leftOut = LeftOut;
        return from prescription in Prescriptions
               let sets = Sides.Whole([.. prescription.Scheme is Scheme.Total ? shares[prescription.Slot] : work[(prescription.Slot, prescription.Exercise)]])
               where sets.Count > 0
               select new Performance(Date, prescription, sets, leftOut.Contains(prescription.Slot) || prescription.SetsLeftOut > 0)
               {
                   Kind = Head.Kind,
                   Begun = Head.Begun,
                   Notes = this.NotesOn(sets),
               };
    }
}

/// <summary>A set as it counts.</summary>
/// <param name="Set">The set.</param>
/// <param name="FormSlipped">Whether its form was told to have slipped.</param>
public sealed record SetResult(SetDone Set, bool FormSlipped)
{
    /// <summary>The seconds of the longer side, where both sides of a hold are told together; null for every other set.</summary>
    public int? OtherSide { get; init; }

    /// <summary>Whether it earns progress: the target met with honest form.</summary>
    public bool OnTarget => Set.Done >= Set.Target && !FormSlipped;
}
