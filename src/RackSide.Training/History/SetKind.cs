namespace RackSide.Training.History;

/// <summary>What a set was for. Only working sets count to volume and progress.</summary>
public enum SetKind
{
    /// <summary>A set of the ramp.</summary>
    WarmUp,

    /// <summary>A set that is told in reps.</summary>
    Working,

    /// <summary>A set that is told in seconds.</summary>
    Hold,

    /// <summary>A share of a total.</summary>
    Share,

    /// <summary>A hold, or a go of work by time, that counts towards seconds in all.</summary>
    HeldShare,
}
