using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.Training.Planning;

/// <summary>The lifts by which a beginning is judged: loaded, and of a motion that moves more than one joint.</summary>
public static class MainLifts
{
    private static readonly Motion[] Motions =
    [
        Motion.Squat, Motion.Hinge, Motion.HorizontalPull, Motion.HorizontalPush, Motion.VerticalPull, Motion.VerticalPush,
    ];

    /// <summary>Whether a motion is one of a main lift.</summary>
    public static bool Has(Motion motion) => Motions.Contains(motion);

    /// <summary>Whether a prescription is one of a main lift: it has a load, and reps to be met.</summary>
    public static bool Is(Prescription asked) =>
        asked.Load is not null && asked.Scheme is Scheme.Fixed or Scheme.Range && Has(asked.Motion);
}
