using NodaTime;

namespace RackSide.Training.Sessions;

/// <summary>About how long the rest of a session takes. Common practice, no source; a lifter's own pace comes later.</summary>
public static class Pace
{
    private static readonly Duration Set = Duration.FromSeconds(40);
    private static readonly Duration RampSet = Duration.FromSeconds(45);

    /// <summary>The time for all items that are not past, with the rests between them.</summary>
    public static Duration Left(Place place)
    {
        var ahead = place.Agenda.Skip(place.Index).Where(i => !place.IsPast(i)).ToList();
        return ahead.Select((item, i) => Of(place, item) + RestAfter(item, i + 1 < ahead.Count ? ahead[i + 1] : null))
            .Aggregate(Duration.Zero, (sum, d) => sum + d);
    }

    private static Duration Of(Place place, AgendaItem item) => item switch
    {
        RampItem => RampSet,
        WorkItem => Set,
        HoldItem hold => Duration.FromSeconds(hold.Target + 10),
        TotalItem total => SharesLeft(place, total) * Set + ((SharesLeft(place, total) - 1) * total.Asked.Rest),
        TickItem tick => Duration.FromMinutes(tick.Minutes),
        _ => Duration.FromSeconds(10),
    };

    private static int SharesLeft(Place place, TotalItem total) =>
        Math.Max(1, (total.Total - place.Counted(total.Slot) + SetInHand.FirstShare - 1) / SetInHand.FirstShare);

    private static Duration RestAfter(AgendaItem item, AgendaItem? next) =>
        item is SetItem or TotalItem ? Rests.Between((SlotItem)item, next) : Duration.Zero;
}
