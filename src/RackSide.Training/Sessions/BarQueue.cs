using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Sessions;

/// <summary>
/// The sets that a lifter still has to do where the bar stands now: those of the slot in hand that go on one and the same
/// bar. What comes after it in the day is not among them, because the bar may be carried elsewhere for it.
/// </summary>
internal sealed class BarQueue
{
    private BarQueue(Motion motion, Bar bar, IReadOnlyList<(SetItem Item, SharedSet Set)> sets) => (Motion, Bar, Sets) = (motion, bar, sets);

    /// <summary>The motion, which tells where the bar has to stand.</summary>
    public Motion Motion { get; }

    /// <summary>The bar they go on.</summary>
    public Bar Bar { get; }

    /// <summary>The sets, the one in hand first.</summary>
    public IReadOnlyList<(SetItem Item, SharedSet Set)> Sets { get; }

    /// <summary>The queue; null where the lifter is not at the bar.</summary>
    public static BarQueue? Of(SessionSetting setting, Place place)
    {
        if (place.Current is not SetItem inHand || !BarInHand.IsOnBar(setting, inHand)
            || SetInHand.AskedLoad(place, inHand) is not { } load || setting.Loads.StackFor(load, Exercise(setting, inHand))?.Bar is not { } bar)
        {
            return null;
        }

        var items = place.Agenda.SkipWhile(i => i != inHand).OfType<SetItem>()
            .TakeWhile(i => BarInHand.IsSameTurn(inHand, i))
            .Where(i => !place.IsPast(i) && BarInHand.IsOnBar(setting, i))
            .Select(i => (Item: i, Load: SetInHand.AskedLoad(place, i)))
            .TakeWhile(i => i.Load is { } l && setting.Loads.StackFor(l, Exercise(setting, i.Item))?.Bar == bar)
            .ToList();
        return new(inHand.Asked.Motion, bar, [.. items.Select((i, n) => (i.Item, new SharedSet(LoadBand.Exactly(i.Load!.Value), RestBefore(place, n == 0 ? null : items[n - 1].Item, i.Item))))]);
    }

    /// <summary>As one of two.</summary>
    public BarUser User(string name) => new(name, [.. Sets.Select(s => s.Set)]);

    /// <summary>A set as it follows the one in hand.</summary>
    public static BarAhead Ahead(SessionSetting setting, SetItem inHand, SetItem item, Mass load) =>
        new(BarInHand.Set(setting, item, load), inHand is WorkItem && item is WorkItem && ReferenceEquals(inHand.Asked, item.Asked));

    private static Exercise? Exercise(SessionSetting setting, SetItem item) => setting.Catalogue.Find(item.Asked.Exercise);

    private static Duration RestBefore(Place place, SetItem? before, SetItem item)
    {
        SlotItem? last = before ?? (place.Sets.LastOrDefault() is { } done ? Rests.ItemOf(place, done.Set) : null);
        return last is null ? Duration.Zero : Rests.Between(last, item);
    }
}
