using NodaTime;
using RackSide.Training.Measures;

namespace RackSide.Training.History;

/// <summary>The stored record. One small door: every write returns only when it is on disk.</summary>
public interface ILogbook : IDisposable
{
    /// <summary>The identity for the next fact of this rack; each call gives a new one.</summary>
    FactId NextId();

    /// <summary>The people who train here, in the order they joined.</summary>
    IReadOnlyList<Lifter> Lifters();

    /// <summary>Keeps a lifter, new or changed.</summary>
    /// <exception cref="IOException">It could not be written; nothing that was acknowledged before is lost.</exception>
    void Keep(Lifter lifter);

    /// <summary>Begins a session.</summary>
    /// <exception cref="IOException">It could not be written.</exception>
    void Begin(SessionHead head);

    /// <summary>Adds a fact to a session that was begun.</summary>
    /// <exception cref="IOException">It could not be written.</exception>
    void Append(FactId session, Fact fact);

    /// <summary>
    /// Takes what was appended, and is on disk, to its second place on disk. It takes longer than writing and is no part of it:
    /// call it when nothing else waits to be written. What nobody settles is settled by the next opening at the latest.
    /// </summary>
    void Settle();

    /// <summary>Adds a fact told outside a session; a <see cref="FactStruck"/> takes an earlier one back.</summary>
    /// <exception cref="IOException">It could not be written.</exception>
    void Tell(string lifter, Fact fact);

    /// <summary>The facts a lifter told outside sessions, in the order told, strikes among them.</summary>
    IReadOnlyList<Fact> Told(string lifter);

    /// <summary>All sessions of a lifter, oldest first.</summary>
    IReadOnlyList<SessionRecord> Sessions(string lifter);

    /// <summary>The cards of all sessions of a lifter, oldest first; no session is read for it.</summary>
    IReadOnlyList<SessionCard> Cards(string lifter);

    /// <summary>Some sessions of a lifter, oldest first.</summary>
    /// <param name="lifter">The lifter's key.</param>
    /// <param name="which">Their identities; one that is not there is passed over.</param>
    IReadOnlyList<SessionRecord> Sessions(string lifter, IReadOnlySet<FactId> which);

    /// <summary>When the newest entry of anybody was made, by its place in the log; null where there is none.</summary>
    Instant? LastEntry { get; }

    /// <summary>The newest session of a lifter that is not closed, or null.</summary>
    SessionRecord? Open(string lifter);

    /// <summary>Keeps a body weight told outside a session; a second one on a date replaces the first.</summary>
    /// <exception cref="IOException">It could not be written.</exception>
    void Weigh(string lifter, LocalDate date, Mass weight);

    /// <summary>Body weights of a lifter by date, those told in sessions among them, oldest first.</summary>
    IReadOnlyList<WeighIn> WeighIns(string lifter);
}

/// <summary>A body weight on a date.</summary>
/// <param name="Date">The day.</param>
/// <param name="Weight">As the scale showed it.</param>
public sealed record WeighIn(LocalDate Date, Mass Weight);
