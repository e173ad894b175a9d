using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Summary;

/// <summary>
/// Volume load: reps done times load, over working sets. A pair counts both dumbbells, one side at a time counts both
/// sides, of help the body less the help is lifted. Warm-up sets, holds and the body alone add nothing, and kilograms and
/// pounds are never summed. The usual arithmetic of the trade, no single source.
/// </summary>
public static class VolumeLoad
{
    /// <summary>The volume load of sessions, one mass for each unit that was loaded.</summary>
    /// <param name="sessions">The sessions.</param>
    /// <param name="catalogue">All exercises; what it no longer has is passed over.</param>
    /// <param name="weighIns">Body weights, oldest first; the newest up to a session's date counts.</param>
    public static IReadOnlyList<Mass> Of(
        IEnumerable<SessionRecord> sessions, Catalogue catalogue, IReadOnlyList<WeighIn> weighIns) =>
    [
        .. from session in sessions
           from result in session.Sets
           let exercise = catalogue.Find(result.Set.Exercise)
           where exercise is not null && result.Set.Kind == SetKind.Working
           let lifted = Lifted(result.Set, exercise, weighIns.LastOrDefault(w => w.Date <= session.Date)?.Weight)
           where lifted is not null
           group lifted.Value by lifted.Value.Unit into alike
           orderby alike.Key
           select alike.Aggregate((a, b) => a + b),
    ];

    /// <summary>
    /// The volume load of a set. Null where it cannot be told: no load, or help without a body weight in the same unit.
    /// </summary>
    public static Mass? Lifted(SetDone set, Exercise exercise, Mass? body)
    {
        Mass? once = (set.Load, exercise.LoadType) switch
        {
            (null, _) => null,
            ({ } help, LoadType.Assisted) => body is { } own && own.Unit == help.Unit && own > help ? own - help : null,
            ({ } one, LoadType.DumbbellPair) => one * 2,
            _ => set.Load,
        };
        return once * (set.Done * (exercise.OneSided ? 2 : 1));
    }
}
