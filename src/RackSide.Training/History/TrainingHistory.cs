using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.History;

/// <summary>All that one lifter did and told.</summary>
/// <param name="Sessions">Open and closed, in the order begun.</param>
/// <param name="ToldOutside">What was told outside sessions, in the order told, strikes among it; null where that is nothing.</param>
public sealed record TrainingHistory(IReadOnlyList<SessionRecord> Sessions, IReadOnlyList<Fact>? ToldOutside = null)
{
    private IReadOnlyList<DayDone>? days;

    // Folded once, because a day's plan asks for each of its exercises.
    private Lazy<Folded> folded = new(() => Folded.Of(Sessions, ToldOutside));

    // A copy may be given the cards of other sessions, so it takes over no days.
    private TrainingHistory(TrainingHistory other) =>
        (Sessions, ToldOutside, Told, Earlier, folded) = (other.Sessions, other.ToldOutside, other.Told, other.Earlier, other.folded);

    /// <summary>A history with nothing in it.</summary>
    public static TrainingHistory Empty { get; } = new([]);

    /// <summary>Open and closed, in the order begun.</summary>
    public IReadOnlyList<SessionRecord> Sessions { get; } = Sessions;

    /// <summary>
    /// Sessions that were not read, because nothing that is asked here rests on more than their cards; in the order begun.
    /// Empty where all were read.
    /// </summary>
    public IReadOnlyList<SessionCard> Earlier { get; init; } = [];

    /// <summary>
    /// The training days done, in the order begun: sessions with a working set, hold, share or slot ticked, and skills sessions
    /// closed, whose log is optional. A session begun and left before its first working set is not a day trained.
    /// </summary>
    public IReadOnlyList<DayDone> Days => days ??=
    [
        .. Sessions.Where(s => s.Trained).Select(s => (s.Head.Id, Day: new DayDone(s.Date, s.Head.DayKey)))
            .Concat(Earlier.Where(c => c.Trained).Select(c => (c.Id, Day: new DayDone(c.Date, c.DayKey))))
            .OrderBy(d => d.Id)
            .Select(d => d.Day),
    ];

    /// <summary>The first date of all sessions; null where there is none.</summary>
    public LocalDate? First => Sessions.Select(s => s.Date).Concat(Earlier.Select(c => c.Date)).Select(d => (LocalDate?)d).Min();

    /// <summary>The same with one session more, begun after all others; folded from what is folded already, for whoever lives through a year of them.</summary>
    public TrainingHistory And(SessionRecord session)
    {
        var before = folded;
        return new TrainingHistory([.. Sessions, session], ToldOutside) { Earlier = Earlier, folded = new(() => before.Value.And(session)) };
    }

    /// <summary>What was told outside sessions and stands, in the order told.</summary>
    public IReadOnlyList<Fact> Told { get; } = (ToldOutside ?? []).Standing();

    /// <summary>
    /// The performances of one exercise in one slot, oldest first: sessions in which at least one working set or hold of
    /// it stands. A session without any is not a miss; it does not count at all.
    /// </summary>
    public IEnumerable<Performance> Of(string exercise, string? slot = null) =>
        folded.Value.ByExercise.GetValueOrDefault(exercise, []).Where(p => slot is null || p.Asked.Slot == slot);

    /// <summary>
    /// The performances of a motion, by whatever exercise, oldest first. Those of skills days are among them, each told by
    /// its <see cref="Performance.Kind"/>.
    /// </summary>
    public IEnumerable<Performance> Of(Motion motion) => folded.Value.ByMotion.GetValueOrDefault(motion, []);

    /// <summary>The sore motions told and not taken back, outside sessions and in them, in the order told.</summary>
    public IReadOnlyList<SoreTold> Sore => folded.Value.Sore;

    /// <summary>The answers to the question before head-down work that stand, oldest first.</summary>
    public IReadOnlyList<HeadDownAnswered> HeadDown => folded.Value.HeadDown;

    /// <inheritdoc/>
    public bool Equals(TrainingHistory? other) => other is not null && Sessions.Equals(other.Sessions) && Earlier.Equals(other.Earlier);

    /// <inheritdoc/>
    public override int GetHashCode() => Sessions.GetHashCode();

    private sealed record Folded(
        IReadOnlyDictionary<string, IReadOnlyList<Performance>> ByExercise,
        IReadOnlyDictionary<Motion, IReadOnlyList<Performance>> ByMotion,
        IReadOnlyList<SoreTold> Sore,
        IReadOnlyList<HeadDownAnswered> HeadDown)
    {
        public static Folded Of(IReadOnlyList<SessionRecord> sessions, IReadOnlyList<Fact>? outside)
        {
            List<Performance> all = [.. sessions.SelectMany(s => s.Performances)];
            return new(
                all.GroupBy(p => p.Asked.Exercise).ToDictionary(g => g.Key, IReadOnlyList<Performance> (g) => [.. g]),
                all.GroupBy(p => p.Asked.Motion).ToDictionary(g => g.Key, IReadOnlyList<Performance> (g) => [.. g]),
                [.. Told<SoreTold>(sessions).Concat((outside ?? []).Standing().OfType<SoreTold>()).OrderBy(s => s.At)],
                [.. Told<HeadDownAnswered>(sessions).OrderBy(a => a.At)]);
        }

        public Folded And(SessionRecord session) => new(
            With(ByExercise, session.Performances, p => p.Asked.Exercise),
            With(ByMotion, session.Performances, p => p.Asked.Motion),
            [.. Sore.Concat(Told<SoreTold>([session])).OrderBy(s => s.At)],
            [.. HeadDown.Concat(Told<HeadDownAnswered>([session])).OrderBy(a => a.At)]);

        private static IEnumerable<T> Told<T>(IReadOnlyList<SessionRecord> sessions) =>
            sessions.Where(s => s.Facts.Any(f => f is T)).SelectMany(s => s.Standing).OfType<T>();

        private static Dictionary<T, IReadOnlyList<Performance>> With<T>(
            IReadOnlyDictionary<T, IReadOnlyList<Performance>> before, IReadOnlyList<Performance> more, Func<Performance, T> by)
            where T : notnull
        {
            var all = new Dictionary<T, IReadOnlyList<Performance>>(before);
            foreach (var same in more.GroupBy(by))
            {
                all[same.Key] = [.. all.GetValueOrDefault(same.Key, []), .. same];
            }

            return all;
        }
    }
}

/// <summary>What was done of one prescription on one day.</summary>
/// <param name="Date">The session's date.</param>
/// <param name="Asked">What was asked for.</param>
/// <param name="Sets">The working sets or holds that stand, in order; never empty.</param>
/// <param name="CutShort">Whether the rest of it was left out.</param>
public sealed record Performance(LocalDate Date, Prescription Asked, IReadOnlyList<SetResult> Sets, bool CutShort)
{
    /// <summary>The kind of the training day it was done on.</summary>
    public DayKind Kind { get; init; }

    /// <summary>When its session began.</summary>
    public Instant Begun { get; init; }

    /// <summary>What was noted on its sets.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
