namespace RackSide.Training.Plans;

/// <summary>What a training day is for.</summary>
public enum DayKind
{
    /// <summary>Loaded lifts.</summary>
    Strength,

    /// <summary>Practice without a bar; lighter, and its log optional.</summary>
    Skills,
}

/// <summary>An ordered list of slots.</summary>
/// <param name="Key">The name facts and the pattern use.</param>
/// <param name="Name">The name people read.</param>
/// <param name="Kind">Strength or skills.</param>
/// <param name="Slots">In order; slots of a group stand together.</param>
public sealed record TrainingDay(string Key, string Name, DayKind Kind, IReadOnlyList<Slot> Slots);
