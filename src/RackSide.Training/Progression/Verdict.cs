using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>What a performance amounts to.</summary>
internal enum Verdict
{
    /// <summary>Every set asked for reached the top of what was asked, at the load, with honest form.</summary>
    Met,

    /// <summary>Every set is within its range of reps, or between the plan's reps and the extra ones offered, and not all are at the top.</summary>
    WithinRange,

    /// <summary>A set at the load, or an easier one, fell short of what was asked.</summary>
    Missed,

    /// <summary>No set fell short, but the form of one slipped.</summary>
    FormSlipped,

    /// <summary>No set fell short, but some were not done at all.</summary>
    CutShort,

    /// <summary>All sets were done, but not enough of them at the load, because it was changed on the way.</summary>
    MixedLoads,
}

/// <summary>Judges a performance by what was asked for on its day, so that a plan changed since does not make it a miss.</summary>
internal static class Judge
{
    /// <summary>The verdict. A harder set than the others that fell short does not count against the load it was not done at.</summary>
    public static Verdict Of(Performance performance, Exercise exercise)
    {
        var load = LoadUsed.Of(performance, exercise);
        var scheme = performance.Asked.Scheme;
        if (scheme is Scheme.Total or Scheme.Accumulate)
        {
            return performance.Sets.Sum(s => s.Set.Done) < performance.Asked.Targets.Sum() ? Verdict.CutShort
                : performance.Sets.Any(s => s.FormSlipped) ? Verdict.FormSlipped
                : Verdict.Met;
        }

        var upToLoad = performance.Sets.Where(s => !LoadUsed.IsHarder(s.Set.Load, load, exercise)).ToList();
        var earned = performance.Sets
            .Where(s => !LoadUsed.IsHarder(load, s.Set.Load, exercise) && s.Set.Done >= Floor(s, scheme) && !s.FormSlipped)
            .ToList();
        return upToLoad.Any(s => s.Set.Done < Floor(s, scheme)) ? Verdict.Missed
            : upToLoad.Any(s => s.FormSlipped) ? Verdict.FormSlipped
            : performance.Sets.Count < performance.Asked.Targets.Count + performance.Asked.SetsLeftOut ? Verdict.CutShort
            : earned.Count < performance.Asked.Targets.Count ? Verdict.MixedLoads
            : earned.All(s => s.Set.Done >= Top(s, scheme)) ? Verdict.Met
            : Verdict.WithinRange;
    }

    /// <summary>Below it a set is missed. Extra reps asked for above the plan's alike reps are an offer, so they are not.</summary>
    private static int Floor(SetResult set, Scheme scheme) => scheme switch
    {
        Scheme.Range r => r.Low,
        Scheme.Fixed f => Math.Min(f.Reps, set.Set.Target),
        _ => set.Set.Target,
    };

    private static int Top(SetResult set, Scheme scheme) => scheme is Scheme.Range r ? r.High : set.Set.Target;
}
