namespace RackSide.Training.History;

/// <summary>
/// A fact's identity: the rack that wrote it and that rack's own count. It is never reused, so logs of several racks can
/// be joined by set union.
/// </summary>
/// <param name="Rack">The rack's short random name.</param>
/// <param name="Sequence">
/// 1 for the rack's first fact, then one more each; on a rack that has joined a gym a reading of its hybrid logical clock,
/// which never goes back and goes past every count it has seen.
/// </param>
public readonly record struct FactId(string Rack, long Sequence) : IComparable<FactId>
{
    /// <summary>Reading order: by sequence, then by rack; never by wall time, which a board without a battery gets wrong.</summary>
    public int CompareTo(FactId other) => Sequence != other.Sequence
        ? Sequence.CompareTo(other.Sequence)
        : string.CompareOrdinal(Rack, other.Rack);

    /// <inheritdoc/>
    public override string ToString() => $"{Rack}-{Sequence}";
}
