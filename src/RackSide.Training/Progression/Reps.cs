using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>The numbers of a scheme: reps, or seconds of a hold.</summary>
internal static class Reps
{
    /// <summary>The fewest a set asks for.</summary>
    public static int Low(Scheme scheme) => scheme switch
    {
        Scheme.Fixed f => f.Reps,
        Scheme.Range r => r.Low,
        Scheme.Hold h => h.LowSeconds,
        Scheme.Accumulate a => a.LowSeconds,
        Scheme.Total t => t.Reps,
        _ => 0,
    };

    /// <summary>The most a set asks for.</summary>
    public static int High(Scheme scheme) => scheme switch
    {
        Scheme.Range r => r.High,
        Scheme.Hold h => h.HighSeconds,
        Scheme.Accumulate a => a.HighSeconds,
        _ => Low(scheme),
    };

    /// <summary>
    /// One number for each set, kept within the scheme; of alike reps at most the extra ones above it, of a total at least
    /// the plan's.
    /// </summary>
    public static IReadOnlyList<int> Each(Scheme scheme, int number) => scheme switch
    {
        Scheme.Tick => [],
        Scheme.Total => [Math.Max(number, Low(scheme))],
        Scheme.Fixed => Same(scheme, Math.Clamp(number, Low(scheme), Low(scheme) + RepsFirst.MostExtra)),
        _ => Same(scheme, Math.Clamp(number, Low(scheme), High(scheme))),
    };

    /// <summary>
    /// Half the sets, rounded up, each as before: five become three, three two. A total is one number and halves in itself.
    /// </summary>
    public static IReadOnlyList<int> Half(Scheme scheme, IReadOnlyList<int> targets) => scheme is Scheme.Total or Scheme.Accumulate
        ? [.. targets.Select(t => (t + 1) / 2)]
        : [.. targets.Take((targets.Count + 1) / 2)];

    /// <summary>What a day really asked for, as a coach would write it: <c>5x5</c>, or <c>3x5</c> where the sets were halved.</summary>
    public static string Text(History.Prescription asked) => asked.Scheme switch
    {
        Scheme.Fixed when asked.Targets.Count > 0 => $"{asked.Targets.Count}x{asked.Targets[0]}",
        Scheme.Range r => $"{asked.Targets.Count}x{r.Low}-{r.High}",
        _ => asked.Scheme.Text,
    };

    private static IReadOnlyList<int> Same(Scheme scheme, int number) => [.. Enumerable.Repeat(number, scheme.Sets)];
}
