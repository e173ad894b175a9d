using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Skills;

/// <summary>How fast a total goes: from its first share to its last, rests among it.</summary>
/// <param name="Reps">Reps done in all.</param>
/// <param name="Sets">Shares done; 1 or more.</param>
/// <param name="Took">From the end of the first share to the end of the last; zero for one share.</param>
public sealed record TotalPace(int Reps, int Sets, Duration Took)
{
    /// <summary>The pace of these shares, in the order done; null where there are none.</summary>
    public static TotalPace? Of(IReadOnlyList<SetResult> shares) => shares.Count == 0
        ? null
        : new(shares.Sum(s => s.Set.Done), shares.Count, shares[^1].Set.At - shares[0].Set.At) { firstReps = shares[0].Set.Done };

    private int firstReps;

    /// <summary>
    /// How long so many more reps take at this pace; null before the second share. The first share's own reps are not in the
    /// time measured, so they are not counted to it either.
    /// </summary>
    public Duration? For(int reps) => Reps > firstReps && Took > Duration.Zero ? Took * ((double)reps / (Reps - firstReps)) : null;
}
