using RackSide.Training.History;

namespace RackSide.Logbook.Storing;

/// <summary>What takes writes: the open logbook's register, or everything in memory.</summary>
internal interface IHolding
{
    /// <summary>Takes a write of what is kept.</summary>
    /// <returns>The document it changed; null where it changed none.</returns>
    Stored? Take(Entry entry);

    /// <summary>Takes facts of a session that was begun, each where it belongs.</summary>
    /// <returns>The session's document; null where all of them were here.</returns>
    Stored? Take(FactId session, IReadOnlyCollection<Fact> facts);

    /// <summary>Whether a session was begun.</summary>
    bool Has(FactId session);

    /// <summary>Whose session that is; null where it was not begun.</summary>
    string? LifterOf(FactId session);

    /// <summary>The lifter of that key, erased or not; null where there is none.</summary>
    Lifter? Lifter(string key);

    /// <summary>A count was given or seen, and must not be given again.</summary>
    void See(FactId id);
}
