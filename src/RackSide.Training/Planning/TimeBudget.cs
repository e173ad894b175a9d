using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.Training.Planning;

/// <summary>A day's plan cut to the time there is.</summary>
/// <param name="Kept">What is still asked for, in order.</param>
/// <param name="NoTimeFor">What is left out, in order; that is no miss.</param>
/// <param name="Estimate">How long the rest takes.</param>
/// <param name="Fits">Whether that is within the time; what is never left out may take longer.</param>
public sealed record TrimmedPlan(
    IReadOnlyList<Prescription> Kept, IReadOnlyList<Prescription> NoTimeFor, Duration Estimate, bool Fits);

/// <summary>
/// Makes a day shorter, what matters least first: arm work, then core, then the last sets of the exercises that follow the
/// main lift, one round after the other down to one set each, then those exercises from the last. Squats, the first
/// exercise of the day and everything that warms up stay as they are. Common practice, no source.
/// </summary>
public static class TimeBudget
{
    /// <summary>The least and the most that can be said of the minutes there are.</summary>
    public const int LeastMinutes = 10, MostMinutes = 180;

    /// <summary>The plan in that time; the same plan where it fits as it is.</summary>
    /// <param name="asked">The day's prescriptions, in order.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="time">The time there is.</param>
    /// <param name="pace">The lifter's pace.</param>
    public static TrimmedPlan Trim(IReadOnlyList<Prescription> asked, Catalogue catalogue, Duration time, LifterPace pace)
    {
        var kept = asked;
        while (TimeEstimate.Of(kept, catalogue, pace) > time && Shorter(kept, asked) is { } shorter)
        {
            kept = shorter;
        }

        var estimate = TimeEstimate.Of(kept, catalogue, pace);
        return new TrimmedPlan(kept, [.. asked.Where(a => kept.All(k => k.Slot != a.Slot))], estimate, estimate <= time);
    }

    /// <summary>The plan with the next thing left out; null where nothing more may be.</summary>
    private static IReadOnlyList<Prescription>? Shorter(IReadOnlyList<Prescription> kept, IReadOnlyList<Prescription> asked)
    {
        var free = kept.Where(p => !IsKept(p, asked)).ToList();
        return free.LastOrDefault(p => IsArms(p.Motion)) is { } arms ? Without(kept, arms)
            : free.LastOrDefault(p => p.Motion == Motion.CoreBrace) is { } core ? Without(kept, core)
            : free.Where(p => p.Targets.Count > 1).GroupBy(p => p.Targets.Count).MaxBy(g => g.Key)?.Last() is { } longest ? OneSetFewer(kept, longest)
            : free.LastOrDefault() is { } last ? Without(kept, last)
            : null;
    }

    private static bool IsKept(Prescription p, IReadOnlyList<Prescription> asked) =>
        p.Motion is Motion.Squat or Motion.Preparation || p.Slot == asked.FirstOrDefault(a => a.Motion != Motion.Preparation)?.Slot;

    private static bool IsArms(Motion motion) => motion is Motion.ElbowFlexion or Motion.ElbowExtension;

    // What is done in turn is left out together, because a half of it would have no rest.
    private static IReadOnlyList<Prescription> Without(IReadOnlyList<Prescription> kept, Prescription gone) =>
        [.. kept.Where(p => p.Slot != gone.Slot && (gone.Group is null || p.Group != gone.Group || p.Motion is Motion.Squat or Motion.Preparation))];

    private static IReadOnlyList<Prescription> OneSetFewer(IReadOnlyList<Prescription> kept, Prescription one) =>
        [.. kept.Select(p => p.Slot == one.Slot ? p with { Targets = [.. p.Targets.SkipLast(1)], SetsLeftOut = p.SetsLeftOut + 1 } : p)];
}
