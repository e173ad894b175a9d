using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Summary;

/// <summary>
/// The body's own mass moved in reps: reps times the share of the body that the exercise moves, both sides of one-sided work.
/// An estimate, and always called one: push-ups by Ebben et al. 2011 (JSCR 25(10):2891-2894), Suprak et al. 2011 (JSCR
/// 25(2):497-503) and Mier et al. 2014 (IJES 7(2):161-168), who disagree by method; squats and chin-ups by the segment masses
/// of de Leva 1996 (J Biomech 29:1223-1230, from memory). Holds give seconds and no mass, whatever they weigh.
/// </summary>
public static class BodyCarried
{
    /// <summary>The mass of sessions; null where no such rep was done or nobody was weighed up to then.</summary>
    /// <param name="sessions">The sessions.</param>
    /// <param name="catalogue">All exercises; what it no longer has is passed over.</param>
    /// <param name="weighIns">Body weights, oldest first; the newest up to a session's date counts.</param>
    public static Mass? Of(IEnumerable<SessionRecord> sessions, Catalogue catalogue, IReadOnlyList<WeighIn> weighIns)
    {
        List<Mass> moved =
        [
            .. from session in sessions
               let body = weighIns.LastOrDefault(w => w.Date <= session.Date)?.Weight
               where body is not null
               from set in session.Sets
               where set.Set.Kind is SetKind.Working or SetKind.Share
               let exercise = catalogue.Find(set.Set.Exercise)
               where exercise?.BodyShare is not null && set.Set.Done > 0
               select body.Value * (exercise.BodyShare!.Value * set.Set.Done * (exercise.OneSided ? 2 : 1)),
        ];
        return moved.Count == 0 || moved.Any(m => m.Unit != moved[0].Unit) ? null : moved.Aggregate((a, b) => a + b);
    }
}
