namespace RackSide.Training.Exercises;

/// <summary>What makes an exercise heavier, and therefore which loads a kit can give it.</summary>
public enum LoadType
{
    /// <summary>A bar and plates on both sleeves; the load counts the bar.</summary>
    Barbell,

    /// <summary>Two dumbbells alike; the load is that of one.</summary>
    DumbbellPair,

    /// <summary>One dumbbell.</summary>
    DumbbellSingle,

    /// <summary>A weight stack.</summary>
    MachineStack,

    /// <summary>The body alone; no load is told.</summary>
    Bodyweight,

    /// <summary>The body and what hangs from it; the load is what hangs.</summary>
    AddedWeight,

    /// <summary>The body less help; the load is the help, and less is harder.</summary>
    Assisted,

    /// <summary>An elastic band; no load is told.</summary>
    Band,
}
