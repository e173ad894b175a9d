using NodaTime;
using RackSide.Training.Exercises;

namespace RackSide.Training.Plans;

/// <summary>A place in a training day that asks for one motion with a set scheme; the lifter fills it with an exercise.</summary>
public sealed record Slot
{
    /// <summary>The name facts use; unique within its training day.</summary>
    public required string Key { get; init; }

    /// <summary>The motion asked for.</summary>
    public required Motion Motion { get; init; }

    /// <summary>Exercises by id, the one preferred first; the first that the kit allows is taken. Never empty.</summary>
    public required IReadOnlyList<string> Exercises { get; init; }

    /// <summary>
    /// The ladder whose rung fills it; null where <see cref="Exercises"/> do. With one, <see cref="Exercises"/> are its rungs,
    /// and each rung brings its own sets and targets unless <see cref="Scheme"/> goes by time or by a total.
    /// </summary>
    public Ladder? Ladder { get; init; }

    /// <summary>The exercise of the rung that a lifter begins with who has done none of the ladder; null for the easiest.</summary>
    public string? BeginWith { get; init; }

    /// <summary>Sets, reps or seconds.</summary>
    public required Scheme Scheme { get; init; }

    /// <summary>Rest after a working set.</summary>
    public required Duration Rest { get; init; }

    /// <summary>What moves it on.</summary>
    public required ProgressRule Progress { get; init; }

    /// <summary>Warm-up sets before it.</summary>
    public RampKind Ramp { get; init; }

    /// <summary>Slots with the same word here are done in turn, a set of each, as a superset or circuit; null stands alone.</summary>
    public string? Group { get; init; }

    /// <summary>The time to change over to the next slot of the group.</summary>
    public Duration ChangeOver { get; init; } = Duration.FromSeconds(15);
}
