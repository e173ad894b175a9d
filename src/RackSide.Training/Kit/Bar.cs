using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Training.Kit;

/// <summary>A bar that plates go on.</summary>
/// <param name="Name">What the gym calls it.</param>
/// <param name="Mass">Its mass as it is lifted: with two collars where their mass is told, or with whatever is always on it.</param>
public sealed record Bar(string Name, Mass Mass)
{
    /// <summary>Its mass without collars, in the unit it is marked in.</summary>
    public Mass Bare { get; init; } = Mass;

    /// <summary>The mass of one of the two collars, which <see cref="Mass"/> counts; null where they are not counted.</summary>
    public Mass? Collar { get; init; }

    /// <summary>The room for plates on one sleeve, in millimetres, the collar taken off; null where it is not told.</summary>
    public decimal? Sleeve { get; init; }

    /// <summary>The motions it is kept for.</summary>
    public IReadOnlyList<Motion> Motions { get; init; } = [];

    /// <summary>The ids of the exercises it is kept for.</summary>
    public IReadOnlyList<string> Exercises { get; init; } = [];

    /// <summary>Whether it is carried to another rack height, or from the floor into the rack, with its plates on.</summary>
    public bool MovesLoaded { get; init; }

    /// <summary>Whether it is kept for some exercises and does not serve the others.</summary>
    public bool IsKept => Motions.Count > 0 || Exercises.Count > 0;

    /// <summary>A bar with two collars of that mass, which count.</summary>
    public static Bar Collared(string name, Mass bare, Mass? collar) => collar is { } one
        ? new(name, MassSum.Of([bare, one, one])) { Bare = bare, Collar = one }
        : new(name, bare);

    /// <summary>Whether it is kept for this exercise.</summary>
    public bool IsKeptFor(Exercise exercise) => Motions.Contains(exercise.Motion) || Exercises.Contains(exercise.Id);

    /// <summary>The same bar: of the same name and mass. What it is kept for does not make another of it.</summary>
    public bool Equals(Bar? other) => other is not null
        && (Name, Mass, Bare, Collar, Sleeve) == (other.Name, other.Mass, other.Bare, other.Collar, other.Sleeve);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, Mass);
}
