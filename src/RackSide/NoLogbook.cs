using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide;

/// <summary>
/// Stands where no logbook was begun yet, for commands that only read: nobody trains here and nothing was done. Whoever
/// writes opens a real one, so a write to this one is a bug.
/// </summary>
internal sealed class NoLogbook : ILogbook
{
    /// <inheritdoc/>
    public FactId NextId() => throw Bug();

    /// <inheritdoc/>
    public IReadOnlyList<Lifter> Lifters() => [];

    /// <inheritdoc/>
    public void Keep(Lifter lifter) => throw Bug();

    /// <inheritdoc/>
    public void Begin(SessionHead head) => throw Bug();

    /// <inheritdoc/>
    public void Append(FactId session, Fact fact) => throw Bug();

    /// <inheritdoc/>
    public void Settle()
    {
    }

    /// <inheritdoc/>
    public void Tell(string lifter, Fact fact) => throw Bug();

    /// <inheritdoc/>
    public IReadOnlyList<Fact> Told(string lifter) => [];

    /// <inheritdoc/>
    public IReadOnlyList<SessionRecord> Sessions(string lifter) => [];

    /// <inheritdoc/>
    public IReadOnlyList<SessionCard> Cards(string lifter) => [];

    /// <inheritdoc/>
    public IReadOnlyList<SessionRecord> Sessions(string lifter, IReadOnlySet<FactId> which) => [];

    /// <inheritdoc/>
    public Instant? LastEntry => null;

    /// <inheritdoc/>
    public SessionRecord? Open(string lifter) => null;

    /// <inheritdoc/>
    public void Weigh(string lifter, LocalDate date, Mass weight) => throw Bug();

    /// <inheritdoc/>
    public IReadOnlyList<WeighIn> WeighIns(string lifter) => [];

    /// <inheritdoc/>
    public void Dispose()
    {
    }

    private static InvalidOperationException Bug() => new("no logbook was begun, so nothing can be written");
}
