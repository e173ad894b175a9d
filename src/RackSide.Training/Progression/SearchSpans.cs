using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>Which loads a first search may try.</summary>
internal static class SearchSpans
{
    /// <summary>Fewer reps than this say little of what is left.</summary>
    private const int FewestReps = 5;

    /// <summary>
    /// The span of an exercise's search; null where nothing is searched: body and bands tell no load, hung weight says
    /// little beside the body it hangs from, a hold is told in seconds, and one load leaves no choice.
    /// At once a bar goes up by at most 10 kg or 20 lb for the lower body, 5 kg or 10 lb for the upper, 2.5 kg or 5 lb
    /// overhead and for the arms; dumbbells, stack and help by one position. Common practice, no source; the handbook's
    /// warm-up to a maximum adds more (NSCA, second-hand: lower 14-18 kg, upper 4-9 kg).
    /// </summary>
    public static SearchSpan? For(Scheme scheme, Exercise exercise, ReachableLoads loads)
    {
        var first = new LoadMoves(exercise, loads).First;
        List<Mass> tried = [.. Candidates(exercise, loads, first).Where(IsTold)];
        return scheme is Scheme.Fixed or Scheme.Range && tried.Count > 1 && tried.Contains(first)
            ? new SearchSpan(Math.Max(FewestReps, Reps.Low(scheme)), tried, first, MostAtOnce(exercise, first.Unit))
            : null;
    }

    private static IEnumerable<Mass> Candidates(Exercise exercise, ReachableLoads loads, Mass first) => exercise.LoadType switch
    {
        LoadType.Barbell => Apart(loads, first, StepSizes.For(exercise, first.Unit), MostAtOnce(exercise, first.Unit)!.Value * (LoadSearch.MostTries - 1)),
        LoadType.DumbbellPair or LoadType.DumbbellSingle or LoadType.MachineStack => loads.All.Take(LoadSearch.MostTries),
        LoadType.Assisted => loads.All.Reverse(),
        _ => [],
    };

    /// <summary>Small plates give far more loads than a search needs: only those a step apart.</summary>
    private static IEnumerable<Mass> Apart(ReachableLoads loads, Mass first, Mass step, Mass most)
    {
        var at = first;
        yield return at;
        foreach (var load in loads.All.TakeWhile(l => l.Kilograms <= first.Kilograms + most.Kilograms))
        {
            if (load.Kilograms >= at.Kilograms + step.Kilograms)
            {
                yield return at = load;
            }
        }
    }

    private static Mass? MostAtOnce(Exercise exercise, MassUnit unit) => (exercise.LoadType, exercise.Motion) switch
    {
        (not LoadType.Barbell, _) => null,
        (_, Motion.Squat or Motion.Hinge or Motion.SingleLeg) => Of(10, 20, unit),
        (_, Motion.VerticalPush or Motion.ElbowFlexion or Motion.ElbowExtension) => Of(2.5m, 5, unit),
        _ => Of(5, 10, unit),
    };

    /// <summary>Plates of both units add up to masses with more decimals than the logbook tells.</summary>
    private static bool IsTold(Mass load) => decimal.Round(load.Amount, NumberEntry.MostDecimals) == load.Amount;

    private static Mass Of(decimal kilograms, decimal pounds, MassUnit unit) => new(unit == MassUnit.Kilogram ? kilograms : pounds, unit);
}
