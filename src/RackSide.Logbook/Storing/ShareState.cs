using RackSide.Training.History;

namespace RackSide.Logbook.Storing;

/// <summary>How this rack stands with its gym.</summary>
/// <param name="Gym">The gym it has joined, or had before it left; null where it never did.</param>
/// <param name="Joined">Whether it is in it now.</param>
/// <param name="Pulled">The gym's number of the last event taken from it; 0 for none.</param>
/// <param name="Anchor">That event, by which a gym's server that was put back to an older state is known; null for none.</param>
/// <param name="Whole">Null where only what waits is to be sent; else everything is, lifters up to this key being done.</param>
/// <param name="Next">The number of the next event that will wait to be sent.</param>
/// <param name="Slots">How many documents the share has besides this one.</param>
internal sealed record ShareState(string? Gym, bool Joined, long Pulled, FactId? Anchor, string? Whole, long Next, long Slots)
{
    /// <summary>A rack that has joined nothing.</summary>
    public static ShareState Alone { get; } = new(null, false, 0, null, null, 1, 0);
}
