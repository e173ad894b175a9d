using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Progression;

/// <summary>Where a lifter stands with an exercise: the last performance, what it amounts to, and what came before it.</summary>
internal sealed class Footing
{
    private readonly IReadOnlyList<Performance> past;
    private readonly ReachableLoads? loads;

    /// <param name="slot">The slot that asks.</param>
    /// <param name="exercise">The exercise.</param>
    /// <param name="past">Its performances, oldest first; at least one.</param>
    /// <param name="loads">The loads that can be had, or null.</param>
    /// <param name="today">The date of the next time.</param>
    public Footing(Slot slot, Exercise exercise, IReadOnlyList<Performance> past, ReachableLoads? loads, LocalDate today)
    {
        (Slot, Exercise, this.past, this.loads) = (slot, exercise, past, loads);
        Gap = Math.Max(0, Period.DaysBetween(Last.Date, today));
        Used = loads is null ? null : LoadUsed.Of(Last, exercise);
        Verdict = Judge.Of(Last, exercise);
    }

    public Slot Slot { get; }

    public Exercise Exercise { get; }

    /// <summary>The last performance.</summary>
    public Performance Last => past[^1];

    /// <summary>Its date in words.</summary>
    public string On => Last.Date.Short();

    /// <summary>Days since the last performance.</summary>
    public int Gap { get; }

    /// <summary>What the last performance amounts to.</summary>
    public Verdict Verdict { get; }

    /// <summary>The load last used, or null where none is told.</summary>
    public Mass? Used { get; }

    /// <summary>The same where it can still be had, or the nearest easier load.</summary>
    public Mass? Load => Used is { } used ? Moves!.Fit(used) : null;

    /// <summary>Harder and easier loads; null where none is told.</summary>
    public LoadMoves? Moves => loads is null ? null : new LoadMoves(Exercise, loads);

    /// <summary>The step of the plan, or else of the load type and body area.</summary>
    public Mass Step => Slot.Progress.Step ?? StepSizes.For(Exercise, loads!.Lightest.Unit);

    /// <summary>The reps or seconds asked for last time.</summary>
    public int Asked => Last.Asked.Targets.DefaultIfEmpty(Reps.Low(Slot.Scheme)).Min();

    /// <summary>The reps or seconds of the poorest set last time.</summary>
    public int Fewest => Last.Sets.Min(s => s.Set.Done);

    /// <summary>Misses in a row at the load last used.</summary>
    public int Misses => Progress.MissesInARow(Exercise, past);

    /// <summary>Whether this miss is one too many at this load.</summary>
    public bool MissedTooOften => Verdict == Verdict.Missed && Misses >= Slot.Progress.MissesBeforeLighter;

    /// <summary>Whether the form slipped the last two times.</summary>
    public bool SlippedTwice => past.Reverse().Take(2).Count(p => Judge.Of(p, Exercise) == Verdict.FormSlipped) == 2;
}
