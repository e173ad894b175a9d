namespace RackSide.Logbook;

/// <summary>A logbook with another record joined to it, and what that added.</summary>
/// <param name="Whole">Both together.</param>
/// <param name="Lifters">People who were not here.</param>
/// <param name="Sessions">Sessions that were not here.</param>
/// <param name="Facts">Facts that were missing in sessions that are here.</param>
/// <param name="WeighIns">Body weights that were not here, or are later told than the one here of that date.</param>
/// <param name="Told">Facts told outside sessions that were not here.</param>
/// <param name="Known">How many of all these were here already, and stay as they are.</param>
public sealed record Joined(LogbookSnapshot Whole, int Lifters, int Sessions, int Facts, int WeighIns, int Told, int Known)
{
    /// <summary>Whether all of it was here already.</summary>
    public bool AddsNothing => Lifters + Sessions + Facts + WeighIns + Told == 0;
}
