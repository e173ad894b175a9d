using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Planning;

namespace RackSide.Training.Sessions;

/// <summary>How long the rest after a set is, and whether one is still running.</summary>
public static class Rests
{
    /// <summary>
    /// The rest between a set and what follows it. Between ramp sets there is none, because changing plates is the rest;
    /// a question interrupts no rest, and the one after it is that of its set.
    /// Between the sides of a hold none either. Within a group only the change-over, and the rest after the group's last.
    /// </summary>
    /// <param name="done">The set just done.</param>
    /// <param name="next">What follows; null at the end of the session.</param>
    public static Duration Between(SlotItem done, AgendaItem? next) => (done, next) switch
    {
        (_, null or ConfirmItem) => Duration.Zero,
        (RampItem, RampItem or AskItem) or (AskItem, RampItem) => Duration.Zero,
        (SearchItem search, _) => RampRest.After(search.Asked, search.Number),
        (AskItem ask, _) => RampRest.After(ask.Asked, ask.Number),
        (RampItem ramp, _) => RampRest.Of(ramp.Asked),
        (HoldItem { Side: Side.Left } left, HoldItem { Side: Side.Right } right) when left.Slot == right.Slot => Duration.Zero,
        (_, SlotItem into) when SameRound(done, into) => done.Asked.ChangeOver,
        _ => done.Asked.Rest,
    };

    /// <summary>Whether what follows a set belongs to the same round of its group, so that one only changes over.</summary>
    public static bool IsChangeOver(Place place, SetDone done) =>
        place.Current is SlotItem next && ItemOf(place, done) is { } item && SameRound(item, next);

    /// <summary>The rest that still runs or is held, found from the facts; null where none does.</summary>
    internal static Resting? Pending(SessionSetting setting, SessionRecord record, Instant now)
    {
        var after = record.Facts.Reverse().TakeWhile(f => f is not FactStruck).Reverse().ToList();
        var place = Place.Of(setting.Checks, record);
        if (LastSet(place, after) is not { } set || ItemOf(place, set) is not { } item)
        {
            return null;
        }

        var changed = after.SkipWhile(f => f != set).OfType<RestChanged>().LastOrDefault();
        var clock = changed is null
            ? RestClock.Start(set.At, Between(item, place.Current))
            : new RestClock(set.At, changed.Ends, changed.Ends is null ? changed.Left : Duration.Zero);
        return clock.IsOver(now) || place.Current is null ? null : new Resting(now, clock, set.Id);
    }

    /// <summary>The last set, also where only its answer is told anew after one was taken back.</summary>
    private static SetDone? LastSet(Place place, List<Fact> after) => after.OfType<SetDone>().LastOrDefault()
        ?? (after.OfType<RepsLeftTold>().LastOrDefault() is { } told ? place.Sets.FirstOrDefault(s => s.Set.Id == told.Set)?.Set : null);

    internal static SlotItem? ItemOf(Place place, SetDone set) => place.Agenda.OfType<SlotItem>().FirstOrDefault(i => i switch
    {
        HoldItem { Side: { } side } when set.Side is { } done && side != done => false,
        SetItem s => s.Slot == set.Slot && s.Kind == set.Kind && s.Number == set.Number,
        AccumulateItem a => a.Slot == set.Slot && set.Kind == SetKind.HeldShare,
        TotalItem t => t.Slot == set.Slot && set.Kind == SetKind.Share,
        _ => false,
    });

    private static bool SameRound(SlotItem done, SlotItem next) =>
        done.Slot != next.Slot && done.Asked.Group is not null && done.Asked.Group == next.Asked.Group
        && Number(done) == Number(next);

    private static int Number(SlotItem item) => item is SetItem set ? set.Number : 1;
}
