using RackSide.Logbook.Copies;
using RackSide.Training.History;
using RackSide.Training.Racks;

namespace RackSide.Logbook.Storing;

/// <summary>Makes a rack's own logbook one of a gym's: keys that are the same on every rack, and everything to be sent.</summary>
internal static class Adopting
{
    /// <summary>The same logbook in the gym.</summary>
    /// <param name="contents">What the rack has.</param>
    /// <param name="rack">The rack's name.</param>
    /// <param name="state">How it stands with the gym.</param>
    /// <param name="gone">Those whom the gym erased.</param>
    public static Contents Of(Contents contents, string rack, ShareState state, IEnumerable<LifterErased> gone)
    {
        var erased = gone.ToDictionary(g => g.Lifter);
        var keys = contents.Lifters.ToDictionary(l => l.Key, GymKey.Of);
        var adopted = contents.InOrder().Renamed(rack, key => (keys.TryGetValue(key, out var gym) ? gym : key) is var known && erased.ContainsKey(known) ? null : known);
        adopted.Share.Stand(state with { Pulled = 0, Anchor = null, Whole = "", Next = adopted.Share.State.Next });
        foreach (var one in erased.Values)
        {
            adopted.Share.Erase(one);
        }

        foreach (var (lifter, place) in adopted.Lifters.Select((l, i) => (l, i)))
        {
            StampFirst(adopted.Share, lifter, rack, place);
        }

        adopted.Share.Stand(adopted.Share.State);
        return adopted;
    }

    // By the moment of joining, so that whatever the gym knows to have been told later counts.
    private static void StampFirst(RackShare share, Lifter lifter, string rack, int place)
    {
        if (!share.Told(lifter.Key).Any())
        {
            share.Stamp(lifter.Key, new FactId(rack, HybridClock.Reading(lifter.Joined) + place), LifterFields.All);
        }
    }
}
