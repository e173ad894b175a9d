using NodaTime;

namespace RackSide.Training.Sessions;

/// <summary>Which phase an item wants.</summary>
internal static class Phases
{
    public static Phase For(AgendaItem? item, Instant at, RestClock? rested) => item switch
    {
        null => new Finishing(at),
        ConfirmItem or TickItem => new Ticking(at),
        AskItem => new Asking(at),
        HoldItem or AccumulateItem => new Holding(at, null, rested),
        _ => new Lifting(at, rested),
    };
}
