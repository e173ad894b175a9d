using RackSide.Training.History;
using RackSide.Training.Racks;

namespace RackSide.Logbook.Storing;

/// <summary>One write: what the journal holds a line of, and what the log grows by.</summary>
internal abstract record Entry
{
    /// <summary>A lifter, new or changed; in a gym also by which event, and what that told.</summary>
    public sealed record LifterKept(Lifter Lifter, FactId? Id = null, LifterFields Fields = LifterFields.None) : Entry;

    /// <summary>A session's beginning.</summary>
    public sealed record SessionBegun(SessionHead Head) : Entry;

    /// <summary>A fact of a session.</summary>
    public sealed record FactAdded(FactId Session, Fact Fact) : Entry;

    /// <summary>A body weight told outside a session.</summary>
    public sealed record WeightKept(KeptWeight Weight) : Entry;

    /// <summary>A fact told outside a session.</summary>
    public sealed record FactTold(KeptFact Told) : Entry;

    /// <summary>Events of the gym that have come, and the gym's number of the last of them.</summary>
    public sealed record Pulled(IReadOnlyList<GymEvent> Events, long Position) : Entry
    {
        /// <summary>The identity of the event at that number; null where none came.</summary>
        public FactId? Last { get; init; }
    }

    /// <summary>What waited, up to this number, has arrived; and how far everything has, where everything is sent.</summary>
    public sealed record Sent(long Number, string? Whole) : Entry;

    /// <summary>The gym's events are taken from the first on again, and everything is sent again where that is asked for.</summary>
    public sealed record ShareAnew(bool Whole) : Entry;

    /// <summary>The rack left its gym.</summary>
    public sealed record GymLeft : Entry;
}
