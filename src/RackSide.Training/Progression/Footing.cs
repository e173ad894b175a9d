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
    /// <param name="past">Its performances that tell something, oldest first; at least one.</param>
    /// <param name="all">All its performances, those of a light week among them.</param>
    /// <param name="loads">The loads that can be had, or null.</param>
    /// <param name="today">The date of the next time.</param>
    /// <param name="meanwhile">What else bears on it.</param>
    public Footing(
        Slot slot,
        Exercise exercise,
        IReadOnlyList<Performance> past,
        IReadOnlyList<Performance> all,
        ReachableLoads? loads,
        LocalDate today,
        Meanwhile meanwhile)
    {
        (Slot, Exercise, this.past, this.loads, Meanwhile) = (slot, exercise, past, loads, meanwhile);
        Gaps = new Gaps(all.Select(p => p.Date), meanwhile.Trained, today);
        OwnGap = Math.Max(0, Period.DaysBetween(all[^1].Date, today));
        Used = loads is null ? null : LoadUsed.Of(Last, exercise);
        Verdict = Judge.Of(Last, exercise);
    }

    public Slot Slot { get; }

    public Exercise Exercise { get; }

    /// <summary>What else bears on it.</summary>
    public Meanwhile Meanwhile { get; }

    /// <summary>The last performance.</summary>
    public Performance Last => past[^1];

    /// <summary>Its date in words.</summary>
    public string On => Last.Date.Short();

    /// <summary>The days the motion was trained.</summary>
    public Gaps Gaps { get; }

    /// <summary>Days since this exercise itself was done, at whatever load.</summary>
    public int OwnGap { get; }

    /// <summary>What the last performance amounts to.</summary>
    public Verdict Verdict { get; }

    /// <summary>Whether the last performance earned something: it is neither a miss nor a session that tells nothing.</summary>
    public bool Earned => Verdict is Verdict.Met or Verdict.WithinRange;

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

    /// <summary>Whether a set's form slipped in each of the last two sessions.</summary>
    public bool SlippedTwice => past.Count > 1 && past.Skip(past.Count - 2).All(p => p.Sets.Any(s => s.FormSlipped));

    /// <summary>The performances from a date on, and the one before it; null where there was none before.</summary>
    public (Performance Before, IReadOnlyList<Performance> Since)? Around(LocalDate date) =>
        past.LastOrDefault(p => p.Date < date) is { } before ? (before, [.. past.Where(p => p.Date >= date)]) : null;

    /// <summary>How many sessions running, the newest first, at the load last used, had such a verdict.</summary>
    public int InARow(Func<Verdict, bool> such) => past.Reverse()
        .TakeWhile(p => LoadUsed.Of(p, Exercise) == Used && such(Judge.Of(p, Exercise)))
        .Count();

    /// <summary>
    /// In how many sessions running, the newest first, the last set went so many reps over its goal at the load last used.
    /// Sessions cut short or done at mixed loads are passed over.
    /// </summary>
    public int TimesOver(int reps) => past.Reverse()
        .TakeWhile(p => LoadUsed.Of(p, Exercise) == Used)
        .Where(p => Judge.Of(p, Exercise) is not (Verdict.CutShort or Verdict.MixedLoads))
        .TakeWhile(p => Judge.Of(p, Exercise) == Verdict.Met && p.Sets[^1].Set.Done >= p.Sets[^1].Set.Target + reps)
        .Count();
}
