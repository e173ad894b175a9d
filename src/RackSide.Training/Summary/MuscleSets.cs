using RackSide.Training.Exercises;
using RackSide.Training.History;

namespace RackSide.Training.Summary;

/// <summary>The working sets of a week that trained a muscle group.</summary>
/// <param name="Group">The group.</param>
/// <param name="Direct">Sets of exercises done for it.</param>
/// <param name="Indirect">Sets of exercises that train it besides.</param>
public sealed record MuscleSets(MuscleGroup Group, int Direct, int Indirect)
{
    /// <summary>
    /// About how many sets a muscle group wants in a week where size is the aim. ACSM 2026, Resistance Training Prescription for
    /// Muscle Function, Hypertrophy, and Physical Performance in Healthy Adults, MSSE (second-hand).
    /// </summary>
    public const int AboutEnough = 10;

    /// <summary>
    /// Sets counted together, half for an indirect one. An estimate: Pelland 2024, preprint, counts sets so (seen); which
    /// muscles an exercise trains besides is the catalogue's word.
    /// </summary>
    public decimal Counted => Direct + (Indirect / 2m);

    /// <summary>
    /// The groups trained, in the order of the body. A set counts once it has a rep done, whether or not it met its target;
    /// warm-up sets do not, nor holds and shares of a total, which are told in seconds and in all.
    /// </summary>
    /// <param name="sessions">The sessions of the week.</param>
    /// <param name="catalogue">All exercises.</param>
    public static IReadOnlyList<MuscleSets> Of(IEnumerable<SessionRecord> sessions, Catalogue catalogue)
    {
        var done = Done(sessions, catalogue).ToList();
        return
        [
            .. Enum.GetValues<MuscleGroup>()
                .Select(g => new MuscleSets(g, done.Count(e => e.Direct() == g), done.Count(e => e.Indirect().Contains(g))))
                .Where(s => s.Direct + s.Indirect > 0),
        ];
    }

    /// <summary>The exercise of every working set done, one entry a set; what the catalogue no longer has is passed over.</summary>
    internal static IEnumerable<Exercise> Done(IEnumerable<SessionRecord> sessions, Catalogue catalogue) => sessions
        .SelectMany(s => s.Sets)
        .Where(s => s.Set is { Kind: SetKind.Working, Done: > 0 })
        .Select(s => catalogue.Find(s.Set.Exercise))
        .OfType<Exercise>();
}

/// <summary>Working sets that push away from the trunk or overhead, against those that pull. Common practice, no source.</summary>
/// <param name="Push">Horizontal and vertical presses.</param>
/// <param name="Pull">Rows and vertical pulls.</param>
public sealed record PushPull(int Push, int Pull)
{
    /// <summary>Counts them.</summary>
    public static PushPull Of(IEnumerable<SessionRecord> sessions, Catalogue catalogue)
    {
        var motions = MuscleSets.Done(sessions, catalogue).Select(e => e.Motion).ToList();
        return new(
            motions.Count(m => m is Motion.HorizontalPush or Motion.VerticalPush),
            motions.Count(m => m is Motion.HorizontalPull or Motion.VerticalPull));
    }
}
