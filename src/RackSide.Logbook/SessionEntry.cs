using RackSide.Training.History;

namespace RackSide.Logbook;

/// <summary>An entry of a session that is to be written: its beginning, or a fact of it.</summary>
/// <param name="Session">The session's identity.</param>
public abstract record SessionEntry(FactId Session)
{
    /// <summary>The entry's own identity.</summary>
    public abstract FactId Id { get; }

    /// <summary>The session begins.</summary>
    /// <param name="Head">What was settled then.</param>
    public sealed record Begun(SessionHead Head) : SessionEntry(Head.Id)
    {
        /// <inheritdoc/>
        public override FactId Id => Head.Id;
    }

    /// <summary>A fact is added.</summary>
    /// <param name="Session">The session's identity.</param>
    /// <param name="Fact">The fact.</param>
    public sealed record Added(FactId Session, Fact Fact) : SessionEntry(Session)
    {
        /// <inheritdoc/>
        public override FactId Id => Fact.Id;
    }
}

/// <summary>Writes entries of sessions.</summary>
public static class SessionEntries
{
    /// <summary>Writes one; returns when it is on disk.</summary>
    /// <exception cref="IOException">It could not be written.</exception>
    public static void Write(this ILogbook logbook, SessionEntry entry)
    {
        switch (entry)
        {
            case SessionEntry.Begun begun:
                logbook.Begin(begun.Head);
                break;
            case SessionEntry.Added added:
                logbook.Append(added.Session, added.Fact);
                break;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }
}
