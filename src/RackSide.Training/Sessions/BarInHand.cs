using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Sessions;

/// <summary>
/// What is on the bar, and what goes on it next. The bar is followed from set to set: each was done with the stack that
/// the screen showed for it, so a load changed in mid session is planned anew from the plates that are really on. Nothing
/// of it is kept, because facts and kit give it back.
/// </summary>
public static class BarInHand
{
    /// <summary>
    /// The loaded bar for the item in hand at a load: the first of a row in which the sets still to come of its slot (or
    /// of its group, in turn) handle the fewest plates from what is on the bar now.
    /// </summary>
    /// <param name="s">The session.</param>
    /// <param name="load">The load of the set in hand, which may differ from the one asked for.</param>
    /// <returns>The loaded bar; null where the item goes on no bar or the kit cannot make the load.</returns>
    public static BarStack? For(Session s, Mass? load) => For(s.Setting, s.Place, s.Place.Current, load, s.OnBar);

    /// <summary>What to change on the bar for the item in hand at a load; null as in <see cref="For(Session, Mass?)"/>.</summary>
    public static PlateChange? Change(Session s, Mass? load) => For(s, load) is { } stack ? PlateChange.Between(s.OnBar, stack) : null;

    /// <summary>What is on the bar after a fact: the stack of its set; as before where the fact is no set on a bar.</summary>
    internal static BarStack? After(SessionSetting setting, Place before, BarStack? onBar, Fact fact) =>
        fact is SetDone set && setting.Catalogue.Find(set.Exercise)?.LoadType == LoadType.Barbell
            ? For(setting, before, Rests.ItemOf(before, set), set.Load, onBar)
            : onBar;

    /// <summary>What is on the bar after all facts of a session; a set struck later was loaded all the same.</summary>
    internal static BarStack? After(SessionSetting setting, SessionRecord record)
    {
        BarStack? onBar = null;
        foreach (var (fact, i) in record.Facts.Select((fact, i) => (fact, i)).Where(f => f.fact is SetDone))
        {
            onBar = After(setting, Place.Of(setting.Checks, record with { Facts = [.. record.Facts.Take(i)] }), onBar, fact);
        }

        return onBar;
    }

    private static BarStack? For(SessionSetting setting, Place place, AgendaItem? item, Mass? load, BarStack? onBar) =>
        item is SlotItem inHand && load is { } now && IsOnBar(setting, inHand)
            ? setting.Loads.Row([Set(setting, inHand, now), .. Ahead(setting, place, inHand, now)], onBar) is [var first, ..] ? first : null
            : null;

    /// <summary>The loads of the sets after the one in hand. A working load that is changed now is meant to stay.</summary>
    private static IEnumerable<BarSet> Ahead(SessionSetting setting, Place place, SlotItem inHand, Mass now) => place.Agenda
        .SkipWhile(i => i != inHand)
        .Skip(1)
        .OfType<SetItem>()
        .TakeWhile(i => IsSameTurn(inHand, i))
        .Where(i => !place.IsPast(i) && IsOnBar(setting, i))
        .Select(i => (Item: i, Load: inHand is WorkItem && i is WorkItem && i.Slot == inHand.Slot ? now : SetInHand.AskedLoad(place, i)))
        .Where(i => i.Load is not null)
        .Select(i => Set(setting, i.Item, i.Load!.Value));

    private static BarSet Set(SessionSetting setting, SlotItem item, Mass load) => new(load, setting.Catalogue.Find(item.Asked.Exercise));

    private static bool IsSameTurn(SlotItem one, SlotItem other) =>
        one.Slot == other.Slot || (one.Asked.Group is { } group && group == other.Asked.Group);

    private static bool IsOnBar(SessionSetting setting, SlotItem item) =>
        setting.Catalogue.Find(item.Asked.Exercise)?.LoadType == LoadType.Barbell;
}
