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

    /// <summary>Sets of the plan that are left out today for want of time; they are not missed, and the rest earns no step.</summary>
    public int SetsLeftOut { get; init; }

    /// <summary>Whether each hold is done, and told, on the left and then on the right.</summary>
    public bool EachSide { get; init; }

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
public sealed record Reason(string Code, string Line)
{
    /// <summary>The numbers the rule reckoned with, so that a program need not read them out of the sentence.</summary>
    public IReadOnlyList<ReasonInput> Inputs { get; init; } = [];

    /// <summary>What is offered beside the load, as one sentence: a longer rest, a cue, smaller plates; null for nothing.</summary>
    public string? Advice { get; init; }

    /// <summary>The same reason with one more thing offered.</summary>
    public Reason Advise(string? advice) => this with { Advice = Advice is null ? advice : advice is null ? Advice : $"{Advice}; {advice}" };
}

/// <summary>One number that a reason rests on.</summary>
/// <param name="Name">What it is, in camel case: <c>misses</c>, <c>from</c>, <c>gapDays</c>; listed in docs/sources.md.</param>
/// <param name="Amount">The number, of at most three decimals.</param>
/// <param name="Unit">Its unit: <c>kg</c>, <c>lb</c>, <c>d</c>, <c>s</c> or <c>%</c>; empty for a count.</param>
public sealed record ReasonInput(string Name, decimal Amount, string Unit = "");
