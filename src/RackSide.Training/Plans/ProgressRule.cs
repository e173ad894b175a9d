using RackSide.Training.Measures;

namespace RackSide.Training.Plans;

/// <summary>Which rule moves a slot on. The arithmetic is in Progression; here is only what a plan file can say.</summary>
public enum ProgressKind
{
    /// <summary>Nothing is counted from day to day.</summary>
    None,

    /// <summary>All targets met: one step more next time.</summary>
    StepWhenAllMet,

    /// <summary>One rep more each time up to the top of the range, then one step more and back to the bottom.</summary>
    WorkUpRange,

    /// <summary>All holds clean: some seconds more next time.</summary>
    LongerHold,

    /// <summary>Two reps or more over the goal in the last set of two sessions running: one step more next time.</summary>
    TwoForTwo,

    /// <summary>The total done with honest form: some reps more in all next time, up to a ceiling.</summary>
    GrowTotal,
}

/// <summary>A slot's rule of progress.</summary>
/// <param name="Kind">Which rule.</param>
/// <param name="Step">The step, where the plan sets one; null takes the default for the load type and body area.</param>
/// <param name="MissesBeforeLighter">How many misses in a row at one load make the next load lighter; 3 by default.</param>
/// <param name="LighterPercent">How much lighter, per cent; 10 by default.</param>
public sealed record ProgressRule(ProgressKind Kind, Mass? Step = null, int MissesBeforeLighter = 3, int LighterPercent = 10)
{
    /// <summary>Whether a step over ten per cent is put off for extra reps in each set; true unless the plan says no.</summary>
    public bool RepsFirst { get; init; } = true;

    /// <summary>How many reps a total grows by; 5 by default, 1 or more.</summary>
    public int GrowBy { get; init; } = 5;

    /// <summary>The most a total grows to; null lets it grow to twice the plan's total.</summary>
    public int? UpTo { get; init; }
}
