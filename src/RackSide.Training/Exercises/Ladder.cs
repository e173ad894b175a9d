namespace RackSide.Training.Exercises;

/// <summary>Easier-to-harder variants of one skill. How a lifter moves on it is a rule of Skills.</summary>
/// <param name="Key">The name plans use; lower case with hyphens, never renamed once shipped.</param>
/// <param name="Name">The name people read.</param>
/// <param name="Goal">What it leads to, in a few words: <c>a full single-leg squat</c>.</param>
/// <param name="Rungs">The easiest first; no exercise twice. Never empty.</param>
public sealed record Ladder(string Key, string Name, string Goal, IReadOnlyList<Rung> Rungs)
{
    /// <summary>The rung of an exercise; null where it is none of this ladder.</summary>
    public Rung? RungOf(string exercise) => Rungs.FirstOrDefault(r => r.Exercise == exercise);

    /// <summary>Which rung it is, 1 for the easiest.</summary>
    public int Number(Rung rung) => Rungs.ToList().IndexOf(rung) + 1;
}

/// <summary>One variant on a ladder. What it needs of kit the catalogue says of its exercise.</summary>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Sets">How many sets or holds; 1 or more.</param>
/// <param name="Low">The fewest reps or seconds asked for in each.</param>
/// <param name="High">The most; all sets clean there lead to the next rung. Above <paramref name="Low"/>.</param>
public sealed record Rung(string Exercise, int Sets, int Low, int High)
{
    /// <summary>The most that is asked for on the way up from the rung before, where half of that would be too much; null for no limit.</summary>
    public int? BeginAt { get; init; }

    /// <summary>What a clean rep or hold looks like; a set that does not is not told as done, or as slipped.</summary>
    public required string Clean { get; init; }

    /// <summary>What can hurt here, in one line; empty for nothing beyond the cue card.</summary>
    public string Caution { get; init; } = "";
}
