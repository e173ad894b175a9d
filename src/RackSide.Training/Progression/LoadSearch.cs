using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Progression;

/// <summary>
/// The short search that finds the first load of an exercise: a light set of few reps, one question (how many more good
/// reps were left?), and a heavier one only while it was easy. It ends with four or more in reserve and never asks for a
/// maximum.
/// </summary>
/// <remarks>
/// Common practice, no source: a first session should leave four or more reps. A beginner's count is rough, and rougher the
/// more reps are left (Hackett 2017, JSCR 31(8):2162-2168: out by 1 rep near the limit, by over 2 when 7 to 10 away; Steele
/// 2017, PeerJ 5:e4105: 2.6 to 3.4 too few), so what an answer may add is small: two per cent for each rep left, and never
/// more than a fixed step. By Epley's line (1985) a set that truly left six or more then still leaves one at the next load.
/// </remarks>
public static class LoadSearch
{
    /// <summary>The most search sets of one exercise.</summary>
    public const int MostTries = 5;

    /// <summary>Reps in reserve that make a load the one to work with.</summary>
    public const int Enough = 4;

    /// <summary>Reps in reserve from which a set was easy, and a heavier load is tried.</summary>
    public const int Easy = 6;

    /// <summary>The answer that stays at the load; what ENTER alone tells.</summary>
    public const int SafeAnswer = Enough;

    /// <summary>Reps in reserve from which a count means little: the load is next to nothing.</summary>
    public const int NextToNothing = 20;

    private const int PercentARep = 2, PercentBack = 20, PositionsBack = 2;

    /// <summary>What comes next.</summary>
    /// <param name="span">What may be tried.</param>
    /// <param name="sets">The search sets so far, in order.</param>
    public static SearchStep Next(SearchSpan span, IReadOnlyList<SearchSet> sets) => sets switch
    {
        [] => new SearchStep.Try(span.First),
        [.., { Short: false, Left: null }] => new SearchStep.Ask(),
        [.., var last] when IsTooHard(last) => Back(span, sets, last),
        [.., { Left: < Easy } last] => Found(last.Load, SearchText.Enough(span, last)),
        [.., var last] when sets.Count >= MostTries => Found(last.Load, SearchText.StillEasy(span, last)),
        [.., var last] => Harder(span, last) is { } next && !sets.Any(s => IsTooHard(s) && !span.IsHarder(s.Load, next))
            ? new SearchStep.Try(next)
            : Found(last.Load, SearchText.NoStep(span, last)),
    };

    private static bool IsTooHard(SearchSet set) => set.Short || set.Left < Enough;

    /// <summary>The hardest load that was not too hard; where none was, an easier one is tried while there is one.</summary>
    private static SearchStep Back(SearchSpan span, IReadOnlyList<SearchSet> sets, SearchSet last)
    {
        var good = sets.Where(s => !IsTooHard(s) && span.IsHarder(last.Load, s.Load)).Select(s => s.Load).ToList();
        if (good.Count > 0)
        {
            var best = span.IsHelp ? good.Min() : good.Max();
            return Found(best, SearchText.TooHard(span, last, best));
        }

        var easier = span.Loads.Where(l => span.IsHarder(last.Load, l)).ToList();
        return easier.Count == 0 ? Found(last.Load, SearchText.Easiest(span, last))
            : sets.Count >= MostTries ? Found(easier[0], SearchText.TooHard(span, last, easier[0]))
            : new SearchStep.Try(StepBack(span, last.Load, easier));
    }

    private static Mass StepBack(SearchSpan span, Mass from, List<Mass> easier) => span.IsHelp || span.MostAtOnce is null
        ? easier[Math.Max(0, easier.Count - PositionsBack)]
        : easier.LastOrDefault(l => l <= from * (1 - (PercentBack / 100m)), easier[0]);

    /// <summary>The hardest load within both limits; one position where loads come in positions; null where there is none.</summary>
    private static Mass? Harder(SearchSpan span, SearchSet last)
    {
        var (harder, left) = (span.Loads.Where(l => span.IsHarder(l, last.Load)).ToList(), last.Left!.Value);
        var share = last.Load * (1 + (PercentARep * left / 100m));
        return harder.Count == 0 ? null
            : span.IsHelp ? harder[0]
            : span.MostAtOnce is { } most ? Last(harder.Where(l => l <= share && l.Kilograms <= last.Load.Kilograms + most.Kilograms))
            : harder[0] <= share || left >= NextToNothing ? harder[0]
            : null;
    }

    private static Mass? Last(IEnumerable<Mass> loads) => loads.Select(l => (Mass?)l).LastOrDefault();

    private static SearchStep.Found Found(Mass load, string line) =>
        new(load, new Reason(Reasons.FirstLoadFound, line) { Inputs = [new("to", load.Amount, load.Symbol)] });
}

/// <summary>What a search asks for next.</summary>
public abstract record SearchStep
{
    private SearchStep()
    {
    }

    /// <summary>A set at this load.</summary>
    public sealed record Try(Mass Load) : SearchStep;

    /// <summary>How many more good reps the last set left.</summary>
    public sealed record Ask : SearchStep;

    /// <summary>The working sets, at this load.</summary>
    public sealed record Found(Mass Load, Reason Why) : SearchStep;
}
