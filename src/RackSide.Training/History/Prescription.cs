using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.History;

/// <summary>
/// What today's slot asks for, and why. It is kept with the session as it was shown that day, because a later version
/// may reckon otherwise and the logbook must still say what the lifter was told.
/// </summary>
public sealed record Prescription
{
    /// <summary>The slot's key.</summary>
    public required string Slot { get; init; }

    /// <summary>The motion asked for.</summary>
    public required Motion Motion { get; init; }

    /// <summary>The exercise's id.</summary>
    public required string Exercise { get; init; }

    /// <summary>Sets, reps or seconds as the plan has them.</summary>
    public required Scheme Scheme { get; init; }

    /// <summary>Reps, or seconds of a hold, asked for in each working set today; one number a set. A total has one: the total.</summary>
    public required IReadOnlyList<int> Targets { get; init; }

    /// <summary>The working load; null where the exercise has none.</summary>
    public Mass? Load { get; init; }

    /// <summary>The warm-up sets, lightest first.</summary>
    public IReadOnlyList<RampSet> Ramp { get; init; } = [];

    /// <summary>The search that finds the working load, in place of a ramp; null where the load is known.</summary>
    public SearchSpan? Search { get; init; }

    /// <summary>Rest after a working set.</summary>
    public required Duration Rest { get; init; }

    /// <summary>The group it is done in turn with, or null.</summary>
    public string? Group { get; init; }

    /// <summary>The time to change over within the group.</summary>
    public Duration ChangeOver { get; init; }

    /// <summary>Why today's load and reps are what they are.</summary>
    public required Reason Why { get; init; }
}

/// <summary>A reason that a program can read and a lifter can too.</summary>
/// <param name="Code">Which rule spoke, in lower case with hyphens: <c>all-met</c>, <c>third-miss</c>; listed in docs/sources.md.</param>
/// <param name="Line">The why-line: one sentence.</param>
public sealed record Reason(string Code, string Line);
