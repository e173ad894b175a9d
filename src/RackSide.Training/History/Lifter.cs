using NodaTime;
using RackSide.Training.Measures;

namespace RackSide.Training.History;

/// <summary>Someone who trains here.</summary>
/// <param name="Key">The name facts use; short and never changed.</param>
/// <param name="Name">The name on the screen.</param>
/// <param name="Unit">The unit this lifter weighs in and reads loads in.</param>
/// <param name="Joined">When the set-up was answered.</param>
/// <param name="CautionsRead">
/// Whether a safety question was answered "yes" and the advice was read. Which question is not kept: RackSide stores no
/// diagnosis.
/// </param>
/// <param name="AvoidInverted">Whether head-down work is replaced by floor work.</param>
public sealed record Lifter(
    string Key, string Name, MassUnit Unit, Instant Joined, bool CautionsRead = false, bool AvoidInverted = false)
{
    /// <summary>What proves a PIN without telling it; null where none is asked for.</summary>
    public string? Pin { get; init; }

    /// <summary>The plan this lifter chose, by the name of its file among the gym's plans; null for the gym's own plan.</summary>
    public string? Plan { get; init; }

    /// <summary>What was told for the numbers on food, water and sleep.</summary>
    public BodyProfile Body { get; init; } = BodyProfile.Empty;
}
