using RackSide.Training.History;

namespace RackSide.Logbook;

/// <summary>How a logbook stands with the other racks of a gym.</summary>
/// <param name="Rack">This rack's short random name.</param>
/// <param name="Gym">The gym it has joined, or had before it left; null where it never did.</param>
/// <param name="Joined">Whether it is in it now.</param>
/// <param name="Waiting">How many events wait to be sent one by one.</param>
/// <param name="Pulled">The gym's number of the last event taken; 0 for none.</param>
/// <param name="Anchor">That event's identity; null for none.</param>
/// <param name="Whole">Null, or the lifter's key up to which everything was sent, where everything is to be.</param>
public sealed record ShareStatus(string Rack, string? Gym, bool Joined, int Waiting, long Pulled, FactId? Anchor, string? Whole)
{
    /// <summary>Whether something is still to be sent.</summary>
    public bool Waits => Joined && (Waiting > 0 || Whole is not null);
}
