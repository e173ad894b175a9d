using NodaTime;
using RackSide.Training.Planning;

namespace RackSide.Training.Sessions;

/// <summary>About how long the rest of a session takes, by the same measure as the day's estimate.</summary>
public static class Pace
{
    /// <summary>The time for all items that are not past, with the rests between them.</summary>
    public static Duration Left(Place place, LifterPace pace)
    {
        var ahead = place.Agenda.Skip(place.Index).Where(i => !place.IsPast(i)).ToList();
        return ahead.Select((item, i) => Of(place, item, pace) + RestAfter(item, i + 1 < ahead.Count ? ahead[i + 1] : null))
            .Aggregate(Duration.Zero, (sum, d) => sum + d);
    }

    private static Duration Of(Place place, AgendaItem item, LifterPace pace) => item switch
    {
        RampItem => pace.WarmUpSet,
        WorkItem => pace.WorkingSet,
        HoldItem hold => Duration.FromSeconds(hold.Target),
        TotalItem total => (total.Total - place.Counted(total.Slot)) * TimeEstimate.RepOfTotal,
        AccumulateItem time => (time.Total - place.Held(time.Slot)) * TimeEstimate.AccumulatedSecond,
        TickItem tick => TimeEstimate.Tick(tick.Minutes),
        _ => Duration.Zero,
    };

    private static Duration RestAfter(AgendaItem item, AgendaItem? next) =>
        item is SetItem set ? Rests.Between(set, next) : Duration.Zero;
}
