namespace RackSide.Training.Exercises;

/// <summary>One way of doing a motion, with its kit and its load type.</summary>
public sealed record Exercise
{
    /// <summary>The name files and facts use; lower case with hyphens, never renamed once shipped.</summary>
    public required string Id { get; init; }

    /// <summary>The name people read.</summary>
    public required string Name { get; init; }

    /// <summary>A name of at most 14 characters for a narrow column.</summary>
    public required string ShortName { get; init; }

    /// <summary>What the body does.</summary>
    public required Motion Motion { get; init; }

    /// <summary>What makes it heavier.</summary>
    public required LoadType LoadType { get; init; }

    /// <summary>What must be at hand, in the words of <c>Kit.Equipment</c>; empty means nothing.</summary>
    public IReadOnlyList<string> Equipment { get; init; } = [];

    /// <summary>One side at a time: reps or seconds are told for each side.</summary>
    public bool OneSided { get; init; }

    /// <summary>Timed: the set is told in seconds.</summary>
    public bool Held { get; init; }

    /// <summary>The head is below the heart, so the screening answers decide whether it is offered.</summary>
    public bool Inverted { get; init; }

    /// <summary>The hold that must have been done before it is offered; null for none.</summary>
    public HoldNeeded? Needs { get; init; }

    /// <summary>
    /// About the share of the body's mass that a rep moves, above 0 and up to 1; an estimate, null where no figure is known.
    /// Where each figure is from stands in docs/sources.md.
    /// </summary>
    public decimal? BodyShare { get; init; }

    /// <summary>Trained first come first; English anatomical names.</summary>
    public IReadOnlyList<string> Muscles { get; init; } = [];

    /// <summary>What the lifter reads between sets.</summary>
    public required CueCard Cues { get; init; }

    /// <summary>An easier exercise of the catalogue, or words for an easier variant; null where there is none.</summary>
    public string? Easier { get; init; }

    /// <summary>A harder exercise of the catalogue, or words for a harder variant; null where there is none.</summary>
    public string? Harder { get; init; }

    /// <summary>Whether safety bars belong under this lift.</summary>
    public bool NeedsSafetyBars => Equipment.Contains("safety bars");

    /// <summary>Whether a mass is told for it.</summary>
    public bool IsLoaded => LoadType is not (LoadType.Bodyweight or LoadType.Band);
}
