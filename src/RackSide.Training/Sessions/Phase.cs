using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Sessions;

/// <summary>What the session waits for. None of it is kept: it is found again from the facts.</summary>
/// <param name="Since">When it began, which is when its screen appeared.</param>
public abstract record Phase(Instant Since);

/// <summary>
/// A check or a checklist item is in hand. Next: the same for the item after it, or whatever phase that item wants. Time
/// changes nothing here.
/// </summary>
public sealed record Ticking(Instant Since) : Phase(Since);

/// <summary>
/// A set is in hand, or a share of a total. Next: resting, or the next item at once where no rest lies between. Time
/// changes nothing here but one late bell, because a lifter under a bar must not be hurried.
/// </summary>
/// <param name="Since">When its screen appeared.</param>
/// <param name="Rested">The rest that ended by itself and turned into this, or null.</param>
public sealed record Lifting(Instant Since, RestClock? Rested = null) : Phase(Since)
{
    /// <summary>The number being changed.</summary>
    public Field Field { get; init; } = Field.Reps;

    /// <summary>What is typed of it so far; empty where nothing is.</summary>
    public string Typed { get; init; } = "";

    /// <summary>Reps other than asked for, or null.</summary>
    public int? Reps { get; init; }

    /// <summary>A load other than asked for, or null.</summary>
    public Mass? Load { get; init; }

    /// <summary>The doubt that was put in words and that the same key again settles; null where there is none.</summary>
    public string? Doubt { get; init; }

    /// <summary>Whether the late bell has rung.</summary>
    public bool RangLate { get; init; }

    /// <summary>Whether anything differs from what was asked for.</summary>
    public bool Changed => Typed.Length > 0 || Reps is not null || Load is not null || Field == Field.Load;
}

/// <summary>
/// A search set was done, and the question after it waits. Next: the rest before the working sets, or the next search set.
/// Time changes nothing here.
/// </summary>
/// <param name="Since">When its screen appeared.</param>
public sealed record Asking(Instant Since) : Phase(Since)
{
    /// <summary>Good reps left, typed so far; empty where nothing is.</summary>
    public string Typed { get; init; } = "";
}

/// <summary>The number that digits and steps change.</summary>
public enum Field
{
    /// <summary>Reps.</summary>
    Reps,

    /// <summary>The load.</summary>
    Load,
}

/// <summary>Resting. Next: at zero, or earlier by a key, the item in hand.</summary>
/// <param name="Since">When its screen appeared.</param>
/// <param name="Clock">The clock.</param>
/// <param name="After">The set it follows.</param>
public sealed record Resting(Instant Since, RestClock Clock, FactId After) : Phase(Since)
{
    /// <summary>Whether "get ready" has rung.</summary>
    public bool RangReady { get; init; }
}

/// <summary>
/// A hold is in hand: ready, then the lead-in, then counting up. Next: resting. It never ends by itself, because nobody
/// can press a key while upside down and only the lifter knows when it ended.
/// </summary>
/// <param name="Since">When its screen appeared.</param>
/// <param name="Started">When the lead-in began; null while ready.</param>
/// <param name="Rested">The rest that ended by itself and turned into this, or null.</param>
public sealed record Holding(Instant Since, Instant? Started = null, RestClock? Rested = null) : Phase(Since)
{
    /// <summary>Seconds typed so far; empty where none are.</summary>
    public string Typed { get; init; } = "";

    /// <summary>Whether the bell at the beginning has rung.</summary>
    public bool RangStart { get; init; }

    /// <summary>Whether the bell that says to come down from a head-down hold has rung.</summary>
    public bool RangComeDown { get; init; }

    /// <summary>Whether the bell at the target has rung.</summary>
    public bool RangTarget { get; init; }
}

/// <summary>A choice lies over another phase. Next: what the choice says, or the phase under it as it was.</summary>
/// <param name="Since">When its screen appeared.</param>
/// <param name="What">Which choice.</param>
/// <param name="Under">What it lies over; its clocks run on.</param>
public sealed record Choosing(Instant Since, Choice What, Phase Under) : Phase(Since)
{
    /// <summary>A number typed so far, where the choice asks for one.</summary>
    public string Typed { get; init; } = "";
}

/// <summary>The choices that can lie over a session.</summary>
public enum Choice
{
    /// <summary>The menu.</summary>
    Menu,

    /// <summary>Another exercise for the slot in hand.</summary>
    OtherExercise,

    /// <summary>How much more to do.</summary>
    CutShort,

    /// <summary>A body weight.</summary>
    BodyWeight,

    /// <summary>Leaving.</summary>
    Leaving,
}

/// <summary>Something to read lies over another phase. Next: any key but + and - goes back to the phase under it.</summary>
/// <param name="Since">When its screen appeared.</param>
/// <param name="What">What is read.</param>
/// <param name="Under">What it lies over; its clocks run on.</param>
public sealed record Reading(Instant Since, Leaf What, Phase Under) : Phase(Since)
{
    /// <summary>The most lines that can be moved on; no text is longer on the smallest page.</summary>
    public const int MostLines = 40;

    /// <summary>How many lines were moved on, on a page too small for the text.</summary>
    public int MovedOn { get; init; }
}

/// <summary>What can be read over a session.</summary>
public enum Leaf
{
    /// <summary>The cue card of the exercise in hand.</summary>
    CueCard,

    /// <summary>Today's plan with what is done of it.</summary>
    TodaysPlan,

    /// <summary>The keys.</summary>
    Help,

    /// <summary>When to stop, and what to do then.</summary>
    StopSigns,
}

/// <summary>All is done or left out: body weight, and the week. Next: ended.</summary>
/// <param name="Since">When its screen appeared.</param>
public sealed record Finishing(Instant Since) : Phase(Since)
{
    /// <summary>A body weight typed so far.</summary>
    public string Typed { get; init; } = "";

    /// <summary>The doubt that was put in words and that the same key again settles.</summary>
    public string? Doubt { get; init; }
}

/// <summary>Over. Nothing follows: what comes now comes too late.</summary>
/// <param name="Since">When.</param>
public sealed record Ended(Instant Since) : Phase(Since);
