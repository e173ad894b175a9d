using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Progression;

/// <summary>How a first load was found, in the words of a why-line.</summary>
internal static class SearchText
{
    public static string Enough(SearchSpan span, SearchSet last) =>
        $"first time: {Name(span, last.Load)} left {last.Left} good reps";

    public static string StillEasy(SearchSpan span, SearchSet last) =>
        $"first time: {Name(span, last.Load)} was easy still; five tries are enough for a day";

    public static string NoStep(SearchSpan span, SearchSet last) => span.IsHarder(span.Loads[^1], last.Load)
        ? $"first time: {Name(span, last.Load)} left {last.Left} good reps; the next step is too big"
        : $"first time: {Name(span, last.Load)} was easy, and goes no further today";

    public static string TooHard(SearchSpan span, SearchSet last, Mass back) => last.Short
        ? $"first time: {Name(span, last.Load)} was too much, so {Name(span, back)}"
        : $"first time: {Name(span, last.Load)} left only {last.Left}, so {Name(span, back)}";

    public static string Easiest(SearchSpan span, SearchSet last) =>
        $"first time: {Name(span, last.Load)} is {(span.IsHelp ? "the most" : "the lightest")} there is; take your time with it";

    private static string Name(SearchSpan span, Mass load) => span.IsHelp ? $"{load} of help" : load.ToString();
}
