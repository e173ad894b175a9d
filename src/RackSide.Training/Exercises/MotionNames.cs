using System.Diagnostics;

namespace RackSide.Training.Exercises;

/// <summary>Motions as people say them.</summary>
public static class MotionNames
{
    /// <summary>The motion in words: <c>horizontal pull</c>.</summary>
    public static string Name(this Motion motion) => motion switch
    {
        Motion.Squat => "squat",
        Motion.Hinge => "hinge",
        Motion.HorizontalPull => "horizontal pull",
        Motion.HorizontalPush => "horizontal push",
        Motion.VerticalPull => "vertical pull",
        Motion.VerticalPush => "vertical push",
        Motion.ElbowFlexion => "elbow flexion",
        Motion.ElbowExtension => "elbow extension",
        Motion.CoreBrace => "core brace",
        Motion.SingleLeg => "single leg",
        Motion.Preparation => "preparation",
        _ => throw new UnreachableException(),
    };
}
