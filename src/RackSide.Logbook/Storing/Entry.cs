using RackSide.Training.History;

namespace RackSide.Logbook.Storing;

/// <summary>One write: what the journal holds a line of, and what the log grows by.</summary>
internal abstract record Entry
{
    /// <summary>A lifter, new or changed.</summary>
    public sealed record LifterKept(Lifter Lifter) : Entry;

    /// <summary>A session's beginning.</summary>
    public sealed record SessionBegun(SessionHead Head) : Entry;

    /// <summary>A fact of a session.</summary>
    public sealed record FactAdded(FactId Session, Fact Fact) : Entry;

    /// <summary>A body weight told outside a session.</summary>
    public sealed record WeightKept(KeptWeight Weight) : Entry;

    /// <summary>A fact told outside a session.</summary>
    public sealed record FactTold(KeptFact Told) : Entry;
}
