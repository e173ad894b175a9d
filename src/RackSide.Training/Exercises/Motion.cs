namespace RackSide.Training.Exercises;

/// <summary>What the body does. A slot asks for a motion; an exercise is one way of doing it.</summary>
public enum Motion
{
    /// <summary>Knees and hips bend together under a load.</summary>
    Squat,

    /// <summary>Hips fold over soft knees.</summary>
    Hinge,

    /// <summary>Pulling towards the trunk.</summary>
    HorizontalPull,

    /// <summary>Pressing away from the trunk.</summary>
    HorizontalPush,

    /// <summary>Pulling down, or the body up.</summary>
    VerticalPull,

    /// <summary>Pressing overhead.</summary>
    VerticalPush,

    /// <summary>Bending the elbow against a load.</summary>
    ElbowFlexion,

    /// <summary>Straightening the elbow against a load.</summary>
    ElbowExtension,

    /// <summary>Holding the trunk still.</summary>
    CoreBrace,

    /// <summary>One leg at a time.</summary>
    SingleLeg,

    /// <summary>Readying joints for what comes; no load and no progress.</summary>
    Preparation,
}
