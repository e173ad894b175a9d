using RackSide.Training.History;
using RackSide.Training.Racks;

namespace RackSide.Logbook.Storing;

/// <summary>One thing kept for the exchange between racks. Its document is used again once it is no longer needed.</summary>
internal abstract record ShareSlot
{
    /// <summary>Nothing now.</summary>
    public sealed record Free : ShareSlot;

    /// <summary>An event that waits to be sent.</summary>
    public sealed record Waiting(long Number, GymEvent Event) : ShareSlot;

    /// <summary>A fact that came before its session did.</summary>
    public sealed record Early(SessionFact Event) : ShareSlot;

    /// <summary>By which event each field of a lifter was told last.</summary>
    public sealed record Stamps(string Lifter, IReadOnlyDictionary<LifterFields, FactId> Told) : ShareSlot;

    /// <summary>A lifter who was erased, for good.</summary>
    public sealed record Gone(LifterErased Event) : ShareSlot;
}
