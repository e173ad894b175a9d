using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Progression;
using RackSide.Training.Schedule;
using RackSide.Training.Strength;

namespace RackSide.Training.Summary;

/// <summary>What of an exercise is looked at over the time.</summary>
public enum CourseOf
{
    /// <summary>The load of each session; where no load is told, its best set.</summary>
    Load,

    /// <summary>The volume load of each week; where no load is told, all its reps or seconds.</summary>
    Volume,

    /// <summary>The span for one repetition that each session's best set leaves.</summary>
    Maximum,
}

/// <summary>One number of a course.</summary>
/// <param name="Date">The session's date, or the Monday of a week.</param>
/// <param name="Value">The number, not below zero.</param>
/// <param name="Upper">The upper end, where the number is a span; else the same.</param>
public sealed record CoursePoint(LocalDate Date, decimal Value, decimal Upper);

/// <summary>An exercise from its first session to its newest.</summary>
/// <param name="Exercise">Which.</param>
/// <param name="Done">Its performances, oldest first.</param>
/// <param name="WeighIns">The lifter's body weights, oldest first; what help leaves to lift rests on them.</param>
public sealed record ExerciseCourse(Exercise Exercise, IReadOnlyList<Performance> Done, IReadOnlyList<WeighIn> WeighIns)
{
    private MassUnit? LoadedIn => Done.Select(p => LoadUsed.Of(p, Exercise)).LastOrDefault(l => l is { Amount: > 0 })?.Unit;

    /// <summary>The unit of the numbers: the newest load's, or <c>s</c> or <c>reps</c> where no load is told.</summary>
    public string Unit => LoadedIn?.Symbol() ?? (ByTime ? "s" : "reps");

    /// <summary>Whether it is told in seconds, held or done by time.</summary>
    public bool ByTime => Done.Count > 0 && Done[^1].Sets[0].Set.Kind is SetKind.Hold or SetKind.HeldShare;

    /// <summary>Whether loads are told.</summary>
    public bool Loaded => LoadedIn is not null;

    /// <summary>The hardest load for each number of reps; of <see cref="Done"/> alone where not said.</summary>
    public IReadOnlyList<RepRecord> Records { get; init; } = RepRecord.Of(Exercise, Done);

    /// <summary>How many sessions lie before <see cref="Done"/>.</summary>
    public int Earlier { get; init; }

    /// <summary>What the newest session says of one repetition; null where it says nothing.</summary>
    public MaximumRange? Maximum => Done.Count == 0 ? null : StrengthEstimate.Of(Done[^1], Exercise);

    /// <summary>
    /// The numbers of a course, oldest first. What was loaded in another unit than the newest is left out rather than
    /// converted; a session or week that tells no such number has none.
    /// </summary>
    public IReadOnlyList<CoursePoint> Points(CourseOf what) => what switch
    {
        CourseOf.Volume => [.. Done.GroupBy(p => IsoWeek.Of(p.Date).Monday).OrderBy(w => w.Key).SelectMany(w => Point(w.Key, w.Sum(Volume)))],
        CourseOf.Maximum => [.. Done.SelectMany(Spans)],
        _ => [.. Done.SelectMany(p => Point(p.Date, Best(p)))],
    };

    private static IEnumerable<CoursePoint> Point(LocalDate date, decimal? value) => value is { } told and > 0 ? [new(date, told, told)] : [];

    private decimal? Best(Performance done) => LoadedIn is not { } unit ? done.Sets.Max(s => s.Set.Done)
        : LoadUsed.Of(done, Exercise) is { } load && load.Unit == unit ? load.Amount
        : null;

    private decimal Volume(Performance done) => done.Sets.Sum(s => LoadedIn is not { } unit ? s.Set.Done
        : VolumeLoad.Lifted(s.Set, Exercise, WeighIns.LastOrDefault(w => w.Date <= done.Date)?.Weight) is { } lifted && lifted.Unit == unit ? lifted.Amount
        : 0);

    private IEnumerable<CoursePoint> Spans(Performance done) => StrengthEstimate.Of(done, Exercise) is { } span && span.Lowest.Unit == LoadedIn
        ? [new(done.Date, span.Lowest.Amount, span.Highest.Amount)]
        : [];
}
