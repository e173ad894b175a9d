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
        Scheme.Total t => t.Reps,
        _ => 0,
    };

    /// <summary>The most a set asks for.</summary>
    public static int High(Scheme scheme) => scheme switch
    {
        Scheme.Range r => r.High,
        Scheme.Hold h => h.HighSeconds,
        _ => Low(scheme),
    };

    /// <summary>One number for each set, kept within the scheme.</summary>
    public static IReadOnlyList<int> Each(Scheme scheme, int number) => scheme is Scheme.Tick
        ? []
        : [.. Enumerable.Repeat(Math.Clamp(number, Low(scheme), High(scheme)), scheme.Sets)];
}
