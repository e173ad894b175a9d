using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>What else bears on an exercise besides its own performances: its motion trained otherwise, and what was told.</summary>
public sealed record Meanwhile
{
    /// <summary>Nothing else.</summary>
    public static Meanwhile Nothing { get; } = new();

    /// <summary>
    /// The strength days on which the motion was trained, by whatever exercise, oldest first. Skills days are practice and do
    /// not shorten a lay-off from loads.
    /// </summary>
    public IReadOnlyList<LocalDate> Trained { get; init; } = [];

    /// <summary>The motion told sore, and no honest session of it since; null where there is none.</summary>
    public SoreTold? Sore { get; init; }

    /// <summary>Whether the motion was trained since it was told sore, and not all of that with honest form.</summary>
    public bool SparedBefore { get; init; }

    /// <summary>The illnesses told, in the order told.</summary>
    public IReadOnlyList<AwayTold> Ill { get; init; } = [];

    /// <summary>Reads it for a motion from all a lifter did and told.</summary>
    /// <param name="history">All that.</param>
    /// <param name="motion">The motion.</param>
    /// <param name="today">The date asked about; nothing after it is looked at.</param>
    public static Meanwhile Of(TrainingHistory history, Motion motion, LocalDate today)
    {
        var done = history.Of(motion).Where(p => p.Date <= today).ToList();
        var sore = history.Sore.LastOrDefault(s => s.Motion == motion && s.On <= today);
        var since = sore is null ? [] : done.Where(p => p.Begun > sore.At).ToList();
        return new Meanwhile
        {
            Trained = [.. NotRead(history, motion, today).Concat(done.Where(p => p.Kind == DayKind.Strength).Select(p => p.Date)).Distinct().Order()],
            Sore = since.Any(IsHonest) ? null : sore,
            SparedBefore = since.Count > 0,
            Ill = [.. history.Told.OfType<AwayTold>().Where(a => a.For == AwayFor.Illness && a.From <= today)],
        };
    }

    /// <summary>
    /// The illness since a date, or null. One whose end is told counts where it ended on that date or later; one whose end
    /// nobody told, where it began so, because who has trained since is taken to be well.
    /// </summary>
    internal AwayTold? IllSince(LocalDate date) => Ill.LastOrDefault(a => (a.Until ?? a.From) >= date);

    private static IEnumerable<LocalDate> NotRead(TrainingHistory history, Motion motion, LocalDate today) =>
        history.Earlier.Where(c => c.Kind == DayKind.Strength && c.Date <= today && c.Motions.Contains(motion)).Select(c => c.Date);

    /// <summary>All sets asked for done, and the form of none told to have slipped.</summary>
    private static bool IsHonest(Performance p) =>
        !p.CutShort && p.Sets.Count >= (p.Asked.Scheme is Scheme.Total or Scheme.Accumulate ? 1 : p.Asked.Targets.Count) && p.Sets.All(s => !s.FormSlipped);
}
